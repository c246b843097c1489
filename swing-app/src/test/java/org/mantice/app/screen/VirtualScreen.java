package org.mantice.app.screen;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.io.File;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import org.junit.platform.launcher.LauncherSession;
import org.junit.platform.launcher.LauncherSessionListener;

/**
 * Runs once per test JVM, before any AWT class is used. The property {@code test.screen} says where windows appear:
 * {@code cacio}, on a screen in memory; {@code real}, on the display there is; unset, nowhere. If no screen can be had,
 * {@link #problem()} says why, and window tests are skipped with that text.
 */
public final class VirtualScreen implements LauncherSessionListener {
    /** The first Java on which the in-memory screen misses classes of the JDK; 17 works, 25 does not. */
    private static final int TOO_NEW = 24;

    private static String problem = "";

    public static String problem() {
        return problem;
    }

    /** Whether windows appear in memory, where robots need no pauses. */
    public static boolean isInMemory() {
        return "cacio".equals(System.getProperty("test.screen"));
    }

    @Override
    public void launcherSessionOpened(LauncherSession session) {
        String mode = System.getProperty("test.screen");
        if (mode == null) return;
        try {
            if (isInMemory()) install();
            else GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice();
        } catch (InvocationTargetException e) {
            problem = mode + ": " + e.getCause();
        } catch (ReflectiveOperationException | RuntimeException | LinkageError | AWTError e) {
            problem = mode + ": " + e;
        }
        if (!problem.isEmpty()) problem += " (Java " + Runtime.version().feature() + ")";
    }

    private static void install() throws ReflectiveOperationException {
        if (System.getProperty("os.name").startsWith("Linux")
                && !new File(System.getProperty("java.home"), "lib/libawt_xawt.so").exists())
            throw new IllegalStateException("this JDK is a headless one (no libawt_xawt.so)");
        if (Runtime.version().feature() >= TOO_NEW)
            throw new IllegalStateException("the in-memory screen stops before Java " + TOO_NEW);
        // Loads the native code of AWT in its full form; needs -Djava.awt.headless=false.
        Class.forName("java.awt.Toolkit");
        // Headless while the JDK makes its own environment, so that it does not look for a display.
        set(GraphicsEnvironment.class, "headless", true);
        Class<?> holder = Class.forName("java.awt.GraphicsEnvironment$LocalGE");
        set(GraphicsEnvironment.class, "headless", false);
        set(Toolkit.class, "toolkit", make("com.github.caciocavallosilano.cacio.ctc.CTCToolkit"));
        set(Class.forName("sun.java2d.SurfaceManagerFactory"), "instance", null);
        set(holder, "INSTANCE", make("com.github.caciocavallosilano.cacio.ctc.CTCGraphicsEnvironment"));
    }

    private static Object make(String name) throws ReflectiveOperationException {
        return Class.forName(name).getDeclaredConstructor().newInstance();
    }

    /** Also sets static final fields, which reflection refuses. */
    @SuppressWarnings({"deprecation", "removal"})
    private static void set(Class<?> type, String field, Object value) throws ReflectiveOperationException {
        Field access = sun.misc.Unsafe.class.getDeclaredField("theUnsafe");
        access.setAccessible(true);
        sun.misc.Unsafe unsafe = (sun.misc.Unsafe) access.get(null);
        Class.forName(type.getName(), true, type.getClassLoader());
        Field target = type.getDeclaredField(field);
        unsafe.putObject(unsafe.staticFieldBase(target), unsafe.staticFieldOffset(target), value);
    }
}
