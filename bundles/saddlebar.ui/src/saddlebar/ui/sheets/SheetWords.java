package saddlebar.ui.sheets;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

import saddlebar.model.commission.MadeFile;
import saddlebar.model.commission.Placement;
import saddlebar.model.commission.Printer;
import saddlebar.model.commission.ProcessSetting;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.TonerSide;
import saddlebar.stencil.printer.TonerJudgement;
import saddlebar.ui.screening.ScreenWords;
import saddlebar.ui.screening.ScreeningWords;

/** What is said of a sheet, its stencils, its process and its printer. */
final class SheetWords {
    private SheetWords() {
    }

    static String stencil(Placement placement) {
        Stencil stencil = placement.getStencil();
        return stencil == null || stencil.getLayer() == null
                ? ScreenWords.Sheets_gone
                : NLS.bind(ScreenWords.Sheets_stencil, ScreeningWords.layer(stencil.getLayer()), stencil.getNumber());
    }

    static String place(Placement placement) {
        return ScreeningWords.number(placement.getXMm(), 1) + ", " + ScreeningWords.number(placement.getYMm(), 1) + " mm"
                + (placement.getRotationDeg() == 0 ? "" : ", " + ScreeningWords.number(placement.getRotationDeg(), 0) + "°");
    }

    static String pieces(Placement placement) {
        return placement.getStencil() == null
                ? ""
                : placement.getStencil().getPieces().stream().filter(entry -> entry.getPiece() != null)
                        .map(entry -> String.valueOf(entry.getPiece().getNumber()))
                        .collect(Collectors.joining(", "));
    }

    /** Where its file is, if it is there. */
    static Optional<Path> file(Sheet sheet, Path commission, String ending) {
        return sheet.getFiles().stream().map(MadeFile::getFile).filter(file -> file != null && file.endsWith(ending)).findFirst().map(commission::resolve)
                .filter(Files::isRegularFile);
    }

    /** Whether it can be printed as it stands. */
    static String state(Sheet sheet, Path commission) {
        if (sheet.getFiles().isEmpty()) {
            return ScreenWords.Sheets_notMade;
        }
        boolean there = sheet.getFiles().stream().allMatch(file -> file.getFile() != null && Files.isRegularFile(commission.resolve(file.getFile())));
        boolean retired = sheet.getPlacements().stream().anyMatch(placement -> placement.getStencil() == null || placement.getStencil().isRetired());
        boolean other = sheet.getPlacements().stream().anyMatch(SheetWords::madeAfter);
        return !there ? ScreenWords.Sheets_fileGone : retired || other ? ScreenWords.Sheets_old : ScreenWords.Sheets_ready;
    }

    /** A stencil that grew or shrank since does not lie on it as the file shows. */
    private static boolean madeAfter(Placement placement) {
        return placement.getStencil() != null && placement.getStencil().getFiles().isEmpty();
    }

    static Optional<ProcessSetting> process(Optional<Studio> studio, String processKey) {
        return studio.flatMap(found -> found.getProcesses().stream().filter(one -> processKey.equals(one.getProcessKey())).findFirst());
    }

    static String side(TonerSide side) {
        return side == TonerSide.SQUEEGEE ? ScreenWords.Sheets_squeegee : ScreenWords.Sheets_print;
    }

    /** What every sheet is bent by. */
    static String printer(Printer printer) {
        StringBuilder words = new StringBuilder();
        words.append(printer.getMeasured() == null
                ? NLS.bind(ScreenWords.Sheets_unmeasured, printer.getName())
                : NLS.bind(ScreenWords.Sheets_measured, new Object[] {printer.getName(), ScreeningWords.number(printer.getScaleX(), 4),
                        ScreeningWords.number(printer.getScaleY(), 4), ScreeningWords.number(100 * printer.getSkew(), 2), printer.getMeasured()}));
        if (printer.getSolidTransmittance() != null) {
            TonerJudgement judged = TonerJudgement.of(printer.getSolidTransmittance());
            String verdict = switch (judged.verdict()) {
                case FUSE -> ScreenWords.Toner_fuse;
                case LOOK_FIRST -> ScreenWords.Toner_look;
                case PRINT_AGAIN -> ScreenWords.Toner_again;
            };
            words.append('\n').append(NLS.bind(ScreenWords.Sheets_toner, ScreeningWords.number(judged.density(), 2), verdict));
        }
        if (!printer.getBandPeriodsMm().isEmpty()) {
            words.append('\n').append(NLS.bind(ScreenWords.Sheets_bands,
                    printer.getBandPeriodsMm().stream().map(mm -> ScreeningWords.number(mm, 2)).collect(Collectors.joining(", "))));
        }
        return words.toString();
    }
}
