package org.mantice.app.view;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.*;
import javax.swing.*;
import org.mantice.app.look.Looks;
import org.mantice.app.model.*;
import org.mantice.app.words.Words;
import com.formdev.flatlaf.util.UIScale;
final class FiguresPictures {
    public static void main(String[] args) throws Exception {
        boolean dark = args[0].equals("dark"); Locale locale = Locale.forLanguageTag(args[1]); float zoom = Float.parseFloat(args[2]);
        Locale.setDefault(locale);
        SwingUtilities.invokeAndWait(() -> Looks.use(dark));
        Words words = Words.of(locale);
        PlannerModel model = Pictures.made(() -> Planned.of(args[3]));
        if (model.state().offers().size() > 1) Pictures.done(() -> model.compare(List.of(0,1,2)));
        String suffix = args[0] + "-" + args[1] + "-" + args[2] + ".png";
        int w = (int)(1400), h = 420;
        Actions actions = new Actions(words);
        actions.bind(Command.STOP, model::stop, PlannerState::isWorking);
        actions.bind(Command.NEXT_DIFFERENCE, model::nextDifference, s -> !s.differences().isEmpty());
        actions.bind(Command.PREVIOUS_DIFFERENCE, model::previousDifference, s -> !s.differences().isEmpty());
        actions.follow(model.state());
        Map<String, JComponent> views = new LinkedHashMap<>();
        views.put("setup", Pictures.made(() -> new SetupBar(model, words, actions, ProfileChoices.PRESETS)));
        views.put("figures", Pictures.made(() -> new FiguresView(model, words)));
        views.put("differences", Pictures.made(() -> new DifferencesView(model, words, actions)));
        views.put("table", Pictures.made(() -> new SheetTableView(model, words)));
        Pictures.done(() -> model.nextDifference());
        for (var e : views.entrySet()) {
            int width = e.getKey().equals("differences") ? 560 : w;
            int height = e.getKey().equals("setup") ? (zoom > 1 ? 330 : 170) : e.getKey().equals("differences") ? 640 : h;
            Pictures.write(Pictures.of(e.getValue(), zoom > 1 && width < 1000 ? 2 * width : width, zoom > 1 ? (int)(height*1.3) : height), Path.of("/tmp/figures-" + e.getKey() + "-" + suffix));
        }
        System.exit(0);
    }
}
