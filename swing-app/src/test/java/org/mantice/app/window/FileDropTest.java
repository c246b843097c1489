package org.mantice.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.Test;

class FileDropTest {
    private final List<Path> opened = new ArrayList<>();
    private final FileDrop drop = new FileDrop(opened::addAll);

    private record Files(List<File> files) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
            return files;
        }
    }

    @Test
    void droppedFilesAreOpenedInTheirOrder() {
        boolean taken = drop.importData(
                new TransferHandler.TransferSupport(new JPanel(), new Files(List.of(new File("a"), new File("b")))));

        assertThat(taken).isTrue();
        assertThat(opened).containsExactly(Path.of("a"), Path.of("b"));
    }

    @Test
    void textAndNothingAreRefused() {
        assertThat(drop.importData(new TransferHandler.TransferSupport(new JPanel(), new StringSelection("a song"))))
                .isFalse();
        assertThat(drop.importData(new TransferHandler.TransferSupport(new JPanel(), new Files(List.of()))))
                .isFalse();
        assertThat(opened).isEmpty();
    }
}
