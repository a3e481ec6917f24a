package saddlebar.production.make;

import java.util.List;
import java.util.Locale;

import saddlebar.production.facts.CommissionFacts;
import saddlebar.production.facts.LayerFacts;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.process.StencilProcesses;

/** The record of the making in plain words: what was made from what, with which settings. Says nothing of time, so that the same making reads the same. */
final class MakingRecord {
    private MakingRecord() {
    }

    static String text(CommissionFacts commission, List<PanelPieces> panels, List<MadeStencil> stencils, List<MadeSheet> sheets,
            StencilProcesses processes) {
        StringBuilder text = new StringBuilder();
        line(text, "MAKING RECORD  %s", commission.label());
        line(text, "");
        for (PanelPieces panel : panels) {
            line(text, "%s  %s", panel.placed().label(), panel.placed().window().title());
            line(text, "    artwork  %s  sha256 %s", panel.placed().panel().art().orElseThrow().file(), panel.placed().panel().art().orElseThrow().sha256());
            line(text, "    pieces   %d, gap %.2f mm", panel.pieces().size(), panel.placed().panel().gapMm());
        }
        line(text, "");
        line(text, "STENCILS");
        stencils.forEach(stencil -> stencil(text, stencil));
        line(text, "");
        line(text, "SHEETS");
        for (MadeSheet sheet : sheets) {
            LaidSheet laid = sheet.laid();
            line(text, "  %d of %d  %s, %s, toner touches the %s side, %.0f dpi", laid.number(), laid.of(), laid.paper().name(), laid.processKey(),
                    laid.tonerSide().getLiteral(), laid.dpi());
            for (LaidStencil stencil : laid.stencils()) {
                line(text, "      %-14s %6.1f, %6.1f mm%s  %s", stencil.stencil().shortLabel(), stencil.xMm(), stencil.yMm(),
                        stencil.quarterTurns() == 0 ? "" : ", turned " + 90 * stencil.quarterTurns() + " degrees", stencil.stencil().label());
            }
            for (int i = 0; i < sheet.files().size(); i++) {
                line(text, "      made/%s  sha256 %s", sheet.files().get(i), sheet.sha256s().get(i));
            }
        }
        line(text, "");
        line(text, "CAUTION");
        sheets.stream().map(sheet -> sheet.laid().processKey()).distinct().sorted()
                .forEach(key -> line(text, "  %s: %s", key, processes.process(key).caution()));
        line(text, "  Paint: its dust may hold lead, cadmium and silica. Wet-clean, wear a fitted respirator, keep food and children away.");
        line(text, "  Kiln: ventilate, never leave it alone near its peak, wear eye protection made for kilns.");
        return text.toString();
    }

    private static void stencil(StringBuilder text, MadeStencil made) {
        PlannedLayerStencil stencil = made.planned();
        LayerFacts layer = stencil.facts();
        ScreeningRecipe screening = layer.recipe().screening();
        line(text, "  %s  (%s)", stencil.label(), stencil.shortLabel());
        line(text, "      pieces    %s", String.join(" ", stencil.alike().stream().map(alike -> String.join("=", alike)).toList()));
        line(text, "      prints    %d, paint %s, %s face, frame %s, mesh %s", stencil.prints(), layer.paint(), layer.face().getLiteral(), layer.frame().name(),
                layer.frame().mesh());
        String screen = switch (screening.method()) {
            case "am" -> String.format(Locale.ROOT, "am, %s lpi at %s degrees, %s dots", screening.lpi(), screening.angleDeg(), screening.dot());
            case "solid" -> "solid";
            default -> String.format(Locale.ROOT, "%s, dots of %s mm", screening.method(), screening.dotMm());
        };
        line(text, "      screened  %s, %.0f dpi, %d x %d px; %s", screen, screening.dpi(), stencil.place().widthPx(), stencil.place().heightPx(),
                made.mirrored() ? "mirrored" : "as drawn");
        line(text, "      found     %.2f %% prints, %d openings too fine, %d bridges lost, %d loose islands", 100 * made.coverage(), made.tooFine(),
                made.bridgesLost(),
                made.looseIslands());
        made.mended().forEach(step -> line(text, "      widened   %s", step));
        line(text, "      made/%s  sha256 %s", made.file(), made.sha256());
    }

    private static void line(StringBuilder text, String format, Object... values) {
        text.append(values.length == 0 ? format : String.format(Locale.ROOT, format, values)).append('\n');
    }
}
