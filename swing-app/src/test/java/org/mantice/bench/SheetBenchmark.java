package org.mantice.bench;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.concurrent.TimeUnit;
import org.mantice.app.look.Looks;
import org.mantice.app.sheet.SheetColours;
import org.mantice.app.sheet.SheetContent;
import org.mantice.app.sheet.SheetPainter;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A sheet from what it shows to a picture: laid out and painted whole, or as much of it as a screen shows. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SheetBenchmark {
    static final int WIDTH = 1200;
    static final int SCREEN = 800;
    private static final double SPACE = 8;

    /** Plans compared; without any it is the bare staff. */
    @Param({"0", "1", "2", "4"})
    public int bands;

    private SheetContent content;
    private SheetColours colours;
    private BufferedImage picture;

    @Setup
    public void plan() {
        content = InventedPlans.content(bands);
        colours = Looks.sheetColours();
        picture = new BufferedImage(WIDTH, (int) painter().height(), BufferedImage.TYPE_INT_RGB);
    }

    private SheetPainter painter() {
        return new SheetPainter(content, InventedPlans.ENGLISH, WIDTH, SPACE);
    }

    private BufferedImage paint(int height) {
        Graphics2D graphics = picture.createGraphics();
        painter().paint(graphics, colours, new Rectangle(0, 0, WIDTH, height));
        graphics.dispose();
        return picture;
    }

    @Benchmark
    public BufferedImage whole() {
        return paint(picture.getHeight());
    }

    @Benchmark
    public BufferedImage screen() {
        return paint(Math.min(SCREEN, picture.getHeight()));
    }
}
