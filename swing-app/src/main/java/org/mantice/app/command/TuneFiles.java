package org.mantice.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.mantice.app.files.FileKind;

/**
 * Files as given; a folder stands for the files in it and below that are of use, by name. Those of no use are no error,
 * but are told. Hidden files, and the backups of our own, are passed over.
 *
 * @param files in order
 * @param others found in folders: neither tunes nor ours
 */
record TuneFiles(List<Path> files, List<Path> others) {
    private static final Set<FileKind> OURS =
            EnumSet.of(FileKind.PLAN, FileKind.ACCORDION, FileKind.PLAYER, FileKind.PATTERNS);

    TuneFiles {
        files = List.copyOf(files);
        others = List.copyOf(others);
    }

    /** Of a folder, the tunes. @throws IllegalArgumentException if a folder has none */
    static TuneFiles in(List<Path> given) throws IOException {
        return of(given, EnumSet.of(FileKind.TUNE), "a folder with tunes in it or below: MusicXML, ABC or MIDI");
    }

    /** The same, with the plans and profiles of a folder as well. */
    static TuneFiles withOurs(List<Path> given) throws IOException {
        Set<FileKind> all = EnumSet.of(FileKind.TUNE);
        all.addAll(OURS);
        return of(given, all, "a folder with tunes, plans or profiles");
    }

    /** Of a folder, the plans. */
    static TuneFiles plansIn(List<Path> given) throws IOException {
        return of(given, EnumSet.of(FileKind.PLAN), "a folder with plans in it or below");
    }

    private static TuneFiles of(List<Path> given, Set<FileKind> wanted, String allowed) throws IOException {
        List<Path> files = new ArrayList<>();
        List<Path> others = new ArrayList<>();
        for (Path path : given) {
            if (!Files.isDirectory(path)) {
                files.add(path);
                continue;
            }
            List<Path> before = List.copyOf(files);
            for (Path file : below(path)) {
                FileKind kind = FileKind.of(file);
                if (wanted.contains(kind)) files.add(file);
                else if (kind == FileKind.OTHER) others.add(file);
            }
            if (files.size() == before.size())
                throw new IllegalArgumentException("nothing to do in folder \"" + path + "\"; allowed: " + allowed);
        }
        return new TuneFiles(files, others);
    }

    private static List<Path> below(Path folder) throws IOException {
        List<Path> found = new ArrayList<>();
        Files.walkFileTree(
                folder, EnumSet.of(FileVisitOption.FOLLOW_LINKS), Integer.MAX_VALUE, new SimpleFileVisitor<>() {
                    @Override
                    public FileVisitResult preVisitDirectory(Path below, BasicFileAttributes attributes) {
                        boolean hidden = !below.equals(folder) && isHidden(below);
                        return hidden ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
                    }

                    @Override
                    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                        if (attributes.isRegularFile() && !isHidden(file) && !isBackup(file)) found.add(file);
                        return FileVisitResult.CONTINUE;
                    }

                    /** Links that lead round in a circle, folders that may not be looked into. */
                    @Override
                    public FileVisitResult visitFileFailed(Path file, IOException cause) {
                        return FileVisitResult.CONTINUE;
                    }
                });
        Collections.sort(found);
        return found;
    }

    private static boolean isHidden(Path file) {
        return String.valueOf(file.getFileName()).startsWith(".");
    }

    private static boolean isBackup(Path file) {
        return String.valueOf(file.getFileName()).endsWith(".json.bak");
    }

    /** Says which files were left out. */
    void tellOthers(PrintWriter err) {
        for (Path other : others) err.println(other + ": no tune, left out");
    }
}
