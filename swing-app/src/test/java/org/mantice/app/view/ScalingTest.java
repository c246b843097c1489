package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Font;
import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JToggleButton;
import javax.swing.UIManager;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.app.look.Looks;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Planners;
import org.mantice.app.model.ProfileChoices;
import org.mantice.app.model.States;
import org.mantice.app.words.Words;

/** Paints the whole panel at other scales, each in a JVM of its own: the scale is read once. */
class ScalingTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"1.0, 1400, 940, en", "1.5, 2100, 1410, de", "2.0, 2800, 1880, de", "2.0, 1920, 1040, en"})
    void panelIsLaidOutWithoutCuttingWords(double scale, int width, int height, String language) throws Exception {
        Path picture = folder.resolve("panel.png");

        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Djava.awt.headless=true",
                        "-Dflatlaf.uiScale=" + scale,
                        "-cp",
                        System.getProperty("java.class.path"),
                        ScalingTest.class.getName(),
                        picture.toString(),
                        String.valueOf(width),
                        String.valueOf(height),
                        language)
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();

        assertThat(process.exitValue()).as(said).isZero();
        BufferedImage image = ImageIO.read(picture.toFile());
        Pictures.keep(image, "shell-scale-" + scale + "-" + width + "-" + language);
        assertThat(image.getWidth()).isEqualTo(width);
        assertThat(said).contains("scale " + scale);
        assertThat(said.lines().filter(line -> line.startsWith("cut: "))).isEmpty();
    }

    /** Paints the panel and prints which words do not fit. */
    public static void main(String[] args) throws Exception {
        Looks.use(false);
        Words words = Words.of(Locale.forLanguageTag(args[3]));
        PlannerModel model = Planners.empty();
        PlannerPanel panel = new PlannerPanel(model, words, new Actions(words), ProfileChoices.PRESETS);
        model.open(States.open("the-rusty-gate"));
        Font font = UIManager.getFont("defaultFont");
        System.out.println("scale " + UIScale.getUserScaleFactor() + ", font " + font.getSize());
        ImageIO.write(
                Pictures.of(panel, Integer.parseInt(args[1]), Integer.parseInt(args[2])), "png", new File(args[0]));
        for (String cut : cut(panel, new ArrayList<>())) System.out.println("cut: " + cut);
    }

    private static List<String> cut(Container root, List<String> found) {
        for (Component child : root.getComponents()) {
            if (!child.isVisible()) continue;
            boolean worded = child instanceof JButton || child instanceof JCheckBox || child instanceof JToggleButton;
            if (worded && child.getWidth() < child.getPreferredSize().width)
                found.add(child.getAccessibleContext().getAccessibleName() + " " + child.getWidth() + " of "
                        + child.getPreferredSize().width);
            if (worded
                    && !(root instanceof javax.swing.JViewport)
                    && (child.getX() + child.getWidth() > root.getWidth() + 1
                            || child.getY() + child.getHeight() > root.getHeight() + 1))
                found.add(child.getAccessibleContext().getAccessibleName() + " reaches out of its panel");
            boolean label = child instanceof JLabel && child.getParent().isVisible();
            if (label && child.getHeight() > 0 && child.getHeight() < child.getPreferredSize().height)
                found.add(((JLabel) child).getText() + " is too low");
            if (child instanceof Container container && !(child instanceof javax.swing.JScrollBar))
                cut(container, found);
        }
        return found;
    }
}
