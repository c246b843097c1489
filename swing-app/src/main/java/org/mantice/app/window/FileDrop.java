package org.mantice.app.window;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;

/** Takes files that are dropped on the window. */
final class FileDrop extends TransferHandler {
    private final transient Consumer<List<Path>> open;

    FileDrop(Consumer<List<Path>> open) {
        this.open = open;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        if (!canImport(support)) return false;
        List<Path> files = new ArrayList<>();
        try {
            List<?> dropped = (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            for (Object file : dropped) files.add(((File) file).toPath());
        } catch (UnsupportedFlavorException | IOException e) {
            return false;
        }
        if (files.isEmpty()) return false;
        open.accept(files);
        return true;
    }
}
