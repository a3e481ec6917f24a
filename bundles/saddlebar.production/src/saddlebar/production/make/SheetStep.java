package saddlebar.production.make;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import saddlebar.model.file.Hashes;
import saddlebar.model.work.Work;
import saddlebar.production.facts.CommissionFacts;
import saddlebar.production.facts.PrinterFacts;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.BitonalTiff;
import saddlebar.stencil.code.CodedBits;
import saddlebar.stencil.code.SheetPdf;
import saddlebar.stencil.process.Face;
import saddlebar.stencil.process.StencilProcess;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.stencil.process.TonerSide;
import saddlebar.stencil.sheet.CompensatedBands;
import saddlebar.stencil.sheet.ComposedSheet;
import saddlebar.stencil.sheet.Paper;
import saddlebar.stencil.sheet.PlacedStencil;
import saddlebar.stencil.sheet.PrinterFit;
import saddlebar.stencil.sheet.SheetLabel;
import saddlebar.stencil.sheet.SheetPlan;
import saddlebar.stencil.sheet.SheetProof;
import saddlebar.stencil.sheet.TapePage;

/** Composes a sheet of stencils that are there, and writes it: TIFF and PDF with the same coded bits, a proof for people, and the tape plan. */
final class SheetStep {
    static final int UNITS_A_ROW = 2;
    private static final double PROOF_DPI = 150;

    private final Path made;
    private final MadeIndex index;
    private final StencilProcesses processes;
    private final String software;

    SheetStep(Path made, MadeIndex index, StencilProcesses processes, String software) {
        this.made = made;
        this.index = index;
        this.processes = processes;
        this.software = software;
    }

    /** Units that {@link #run} tells in all. */
    static long units(LaidSheet sheet) {
        return (long) UNITS_A_ROW * paper(sheet).heightPx(sheet.dpi());
    }

    /** @param stencils by label; all that lie on the sheet */
    MadeSheet run(CommissionFacts commission, LaidSheet sheet, Map<String, MadeStencil> stencils, boolean afresh, Work work) throws IOException {
        SheetPlan plan = plan(commission, sheet, stencils);
        List<String> files = List.of(sheet.file() + ".tif", sheet.file() + ".pdf", sheet.file() + "-proof.png", sheet.file() + "-tape-plan.pdf");
        String key = ContentKey.of("sheet", commission.label(), sheet.number(), sheet.of(), sheet.paper(), sheet.processKey(), sheet.tonerSide(), sheet.dpi(),
                sheet.stencils().stream().map(laid -> laid.stencil().label() + " " + laid.xMm() + " " + laid.yMm() + " " + laid.quarterTurns() + " "
                        + stencils.get(laid.stencil().label()).sha256OfBits()).toList(),
                commission.printer().isTrue() ? "" : commission.printer());
        List<String> kept = new ArrayList<>();
        for (String file : files) {
            Optional<MadeFileFacts> facts = afresh ? Optional.empty() : index.kept(file, key);
            facts.ifPresent(found -> kept.add(found.sha256()));
        }
        if (kept.size() == files.size()) {
            work.advance(units(sheet));
            return new MadeSheet(sheet, key, files, kept, false, 0);
        }
        long begun = System.nanoTime();
        String title = commission.label() + ", sheet " + sheet.number() + " of " + sheet.of();
        work.say(title);
        BitonalSettings settings = BitonalSettings.at(sheet.dpi()).withTitle(title).withDescription(description(sheet, stencils)).withSoftware(software)
                .replacing(true).onThreads(1);
        Path tiff = made.resolve(files.get(0));
        try (CodedBits coded = CodedBits.of(composed(plan, sheet, commission.printer()), tiff, settings, work)) {
            BitonalTiff.write(coded, tiff, settings, work.part(0, plan.heightPx()));
            SheetPdf.write(coded, made.resolve(files.get(1)), settings, work.part(0, plan.heightPx()));
        }
        SheetProof.write(BitonalTiff.read(tiff), plan, made.resolve(files.get(2)), PROOF_DPI, settings, work);
        TapePage.writePdf(plan, made.resolve(files.get(3)), settings);
        List<String> sha256s = new ArrayList<>();
        for (String file : files) {
            String sha256 = Hashes.sha256(made.resolve(file));
            sha256s.add(sha256);
            index.enter(file, key, sha256, Map.of());
        }
        return new MadeSheet(sheet, key, files, sha256s, true, (System.nanoTime() - begun) / 1e9);
    }

    /** The sheet, bent the other way than its printer bends it, so that what was printed on different days registers. */
    private static BitBands composed(SheetPlan plan, LaidSheet sheet, PrinterFacts printer) throws IOException {
        BitBands plain = ComposedSheet.of(plan);
        if (printer.isTrue()) {
            return plain;
        }
        boolean turned = sheet.paper().widthMm() > sheet.paper().heightMm(); // fed upright all the same
        PrinterFit upright = new PrinterFit(printer.acrossScale(), printer.downScale(), printer.skew());
        PrinterFit fit = turned ? upright.turned() : upright;
        return new CompensatedBands(plain, fit, plan.process().printsWhite());
    }

    private static Paper paper(LaidSheet sheet) {
        return new Paper(sheet.paper().name(), sheet.paper().widthMm(), sheet.paper().heightMm());
    }

    private SheetPlan plan(CommissionFacts commission, LaidSheet sheet, Map<String, MadeStencil> stencils) {
        StencilProcess process = processes.process(sheet.processKey());
        List<PlacedStencil> placed = sheet.stencils().stream().map(laid -> {
            MadeStencil stencil = stencils.get(laid.stencil().label());
            RasterPlace place = laid.stencil().place();
            return new PlacedStencil(laid.stencil().label(), laid.stencil().shortLabel(), laid.xMm(), laid.yMm(), laid.quarterTurns(), place.widthPx(),
                    place.heightPx(), Face.valueOf(laid.stencil().facts().face().name()), stencil.mirrored(),
                    () -> BitonalTiff.read(made.resolve(stencil.file())));
        }).toList();
        return new SheetPlan(paper(sheet), sheet.dpi(), sheet.paper().marginMm(), process, TonerSide.valueOf(sheet.tonerSide().name()),
                new SheetLabel(commission.label(), sheet.number(), sheet.of(), ""), placed);
    }

    private static String description(LaidSheet sheet, Map<String, MadeStencil> stencils) {
        StringBuilder text = new StringBuilder();
        for (LaidStencil laid : sheet.stencils()) {
            text.append("stencil ").append(laid.stencil().shortLabel()).append(": ").append(laid.stencil().label()).append(", bits sha256 ")
                    .append(stencils.get(laid.stencil().label()).sha256OfBits()).append('\n');
        }
        return text.append("process: ").append(sheet.processKey()).append(", toner touches the ").append(sheet.tonerSide().getLiteral()).append(" side\n")
                .toString();
    }
}
