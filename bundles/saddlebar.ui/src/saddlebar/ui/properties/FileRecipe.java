package saddlebar.ui.properties;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.util.URI;

import saddlebar.model.commission.MadeFile;
import saddlebar.model.commission.Stencil;
import saddlebar.model.problem.Refusal;
import saddlebar.stencil.code.BitonalTiff;
import saddlebar.stencil.code.TiffBits;
import saddlebar.ui.screening.ScreenWords;

/** The recipe that a made stencil's file tells of itself, whatever the layer's recipe says today. Only the head of the file is read. */
final class FileRecipe {
    private FileRecipe() {
    }

    /** A row for each line of it; none if there is no such file or it says nothing. */
    static List<Row> rows(Stencil stencil) {
        List<Row> rows = new ArrayList<>();
        URI model = stencil.eResource() == null ? null : stencil.eResource().getURI();
        if (model == null || !model.isFile()) {
            return rows;
        }
        Path commission = Path.of(model.toFileString()).toAbsolutePath().getParent().getParent(); // windows/W01.saddlebar
        stencil.getFiles().stream().map(MadeFile::getFile).filter(file -> file != null && file.endsWith(".tif")).findFirst().map(commission::resolve)
                .filter(Files::isRegularFile).ifPresent(file -> read(file, rows));
        return rows;
    }

    private static void read(Path file, List<Row> rows) {
        try (TiffBits bits = BitonalTiff.read(file)) {
            for (String line : bits.info().description().split("\n")) {
                int colon = line.indexOf(": ");
                if (colon > 0) {
                    rows.add(Row.fact(rows.isEmpty() ? ScreenWords.Property_fileSays + ": " + line.substring(0, colon) : line.substring(0, colon),
                            line.substring(colon + 2)));
                }
            }
        } catch (IOException | Refusal e) {
            rows.add(Row.fact(ScreenWords.Property_fileSays, e.getMessage()));
        }
    }
}
