package saddlebar.cli;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import saddlebar.colour.Appearance;
import saddlebar.colour.ColourMatch;
import saddlebar.colour.Glass;
import saddlebar.colour.Lab;
import saddlebar.colour.Light;
import saddlebar.colour.Matt;
import saddlebar.colour.PaintFilm;
import saddlebar.colour.PrintedGlass;
import saddlebar.colour.Spectrum;
import saddlebar.colour.SpectrumFile;
import saddlebar.colour.Srgb;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Paint;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;

/** What halftoned matts on a glass look like with light behind them. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "colour", sortOptions = false, description = "Tells what a halftoned matt on a glass looks like with light behind it.",
        footer = {"", "Example: saddlebar colour --glass amber --paint \"umber matt\" --coverage 0.4 --light D65,A --json"})
public final class ColourCommand implements BenchCommand {
    private static final double USUAL_MM = 3;

    @Option(names = "--glass", required = true, paramLabel = "G",
            description = "Glass by its name in the studio tables, its colour in daylight as #rrggbb, or a CSV of its spectrum (nm,transmittance).")
    private String glassWord;

    @Option(names = "--paint", required = true, paramLabel = "P",
            description = "Paint by its name in the studio tables, or the colour of a solid over clear glass as #rrggbb; several may be given.")
    private List<String> paintWords;

    @Option(names = "--coverage", required = true, paramLabel = "A",
            description = "Share of the glass that the paint truly covers, 0 to 1; one for each paint.")
    private List<Double> coverages;

    @Option(names = "--gain", paramLabel = "S", defaultValue = "0",
            description = "Coverages are those of the stencil, and dots grow by so much at one half (0.15 = 15 points); 0 if not given.")
    private double gain;

    @Option(names = "--light", paramLabel = "L", split = ",", defaultValue = "D65",
            description = "D65 (north light), A (lamp), dusk, or a daylight such as 7500K; several with commas. D65 if not given.")
    private List<String> lightWords;

    @Option(names = "--thickness-mm", paramLabel = "T", description = "Thickness of the glass to be used; as measured if not given.")
    private Double thicknessMm;

    @Option(names = "--measured-mm", paramLabel = "M", description = "Thickness at which a #rrggbb or a spectrum was measured; 3 if not given.")
    private Double measuredMm;

    @Option(names = "--approved", paramLabel = "#rrggbb", description = "Approved colour to compare with, beside white; the bare glass if not given.")
    private String approvedWord;

    @Mixin
    private CommonOptions common;

    /** The JSON document: the first light at the top, each light in its row. */
    record Answer(List<Double> lab, String srgb, double transmittance, double deltaE2000, String comparedWith, String verdict, boolean outOfGamut,
            String light,
            String adaptation, String glass, double thicknessMm, List<String> paints, List<Double> coverage, List<LightRow> lights,
            List<String> notes) {
    }

    record LightRow(String light, List<Double> lab, List<Double> xyz, String srgb, String srgbUnadapted, double transmittance, double deltaE2000,
            boolean outOfGamut) {
    }

    @Override
    public Integer call() throws IOException {
        List<Light> lights = lights();
        List<Double> covered = covered();
        Lab approved = approved();
        List<String> notes = new ArrayList<>();
        var tables = new StudioColours();
        Glass glass = glass(tables, notes);
        List<Matt> matts = new ArrayList<>();
        for (int i = 0; i < paintWords.size(); i++) {
            matts.add(new Matt(paint(tables, paintWords.get(i), notes), covered.get(i)));
        }
        Spectrum printed = PrintedGlass.of(glass.transmittance(), matts);
        List<LightRow> rows = new ArrayList<>();
        for (Light light : lights) {
            rows.add(row(light, Appearance.of(printed, light), approved != null ? approved : Appearance.of(glass.transmittance(), light).lab()));
        }
        LightRow first = rows.get(0);
        ColourMatch.Verdict worst = rows.stream().map(row -> ColourMatch.verdictOf(row.deltaE2000)).max(ColourMatch.Verdict::compareTo).orElseThrow();
        boolean missed = approved != null && worst == ColourMatch.Verdict.DIFFERENT;
        String with = approved != null ? approvedWord.toLowerCase(Locale.ROOT) : "bare glass";
        String verdict = ColourMatch.verdictOf(first.deltaE2000).words();
        common.answer(new Answer(first.lab, first.srgb, first.transmittance, first.deltaE2000, with, verdict, first.outOfGamut, first.light,
                "Bradford", glass.name(),
                glass.thicknessMm(), matts.stream().map(matt -> matt.film().name()).toList(), covered, rows, notes),
                words(glass, matts, rows, with,
                        notes));
        return missed ? ATTENTION : DONE;
    }

    private static LightRow row(Light light, Appearance seen, Lab other) {
        return new LightRow(light.name(), List.of(seen.lab().l(), seen.lab().a(), seen.lab().b()), List.of(seen.xyz().x(), seen.xyz().y(),
                seen.xyz().z()),
                seen.screen().shown().hex(), seen.unadapted().shown().hex(), seen.transmittance(), ColourMatch.of(seen.lab(), other).deltaE2000(),
                seen.screen().outOfGamut());
    }

    private List<Light> lights() {
        Map<String, Light> lights = new LinkedHashMap<>();
        for (String word : lightWords) {
            Light light = light(word.strip());
            lights.putIfAbsent(light.name(), light);
        }
        return List.copyOf(lights.values());
    }

    private Light light(String word) {
        switch (word.toLowerCase(Locale.ROOT)) {
            case "d65" :
                return Light.D65;
            case "a" :
                return Light.A;
            case "dusk" :
                return Light.dusk();
            default :
                break;
        }
        if (word.matches("\\d{4,5}[kK]")) {
            double cctK = Double.parseDouble(word.substring(0, word.length() - 1));
            if (cctK >= Light.LEAST_DAYLIGHT_K && cctK <= Light.MOST_DAYLIGHT_K) {
                return Light.daylight(cctK);
            }
        }
        throw common.wrong("--light takes D65, A, dusk or a daylight of 4000K to 25000K, not '" + word + "'.");
    }

    private List<Double> covered() {
        if (coverages.size() != paintWords.size()) {
            throw common.wrong("There are " + paintWords.size() + " paints and " + coverages.size()
                    + " coverages: give one --coverage for each --paint.");
        }
        if (paintWords.size() > PrintedGlass.MOST_MATTS) {
            throw common.wrong("--paint may be given at most " + PrintedGlass.MOST_MATTS + " times.");
        }
        if (!(gain >= -0.25 && gain <= 0.25)) {
            throw common.wrong("--gain takes -0.25 to 0.25, not " + gain + ".");
        }
        for (double coverage : coverages) {
            if (!(coverage >= 0 && coverage <= 1)) {
                throw common.wrong("--coverage takes a share from 0 to 1, not " + coverage + ".");
            }
        }
        return coverages.stream().map(coverage -> Matt.gained(coverage, gain)).toList();
    }

    private Lab approved() {
        return approvedWord == null
                ? null
                : Srgb.parse(approvedWord).orElseThrow(() -> common.wrong("--approved takes a colour as #rrggbb, not '" + approvedWord + "'.")).lab();
    }

    private Glass glass(StudioColours tables, List<String> notes) throws IOException {
        requireThickness("--thickness-mm", thicknessMm);
        requireThickness("--measured-mm", measuredMm);
        double measured = measuredMm == null ? USUAL_MM : measuredMm;
        Glass glass;
        if (glassWord.startsWith("#")) {
            glass = Glass.coloured(glassWord.toLowerCase(Locale.ROOT), colour("--glass", glassWord), measured);
            notes.add("only the glass's colour in daylight is known: its spectrum is a plausible one, other lights are an estimate");
        } else if (glassWord.toLowerCase(Locale.ROOT).endsWith(".csv")) {
            Path file = Path.of(glassWord);
            glass = Glass.measured(String.valueOf(file.getFileName()), spectrum(file), measured);
        } else {
            GlassStock stock = tables.glass(glassWord).orElseThrow(() -> unknown("--glass", glassWord, tables.glassNames()));
            if (measuredMm != null) {
                throw common.wrong("--measured-mm goes with a #rrggbb or a spectrum; the studio tables know the thickness of '" + stock.getName()
                        + "'.");
            }
            glass = Glass.coloured(stock.getName(), Srgb.parse(stock.getColour()).orElseThrow(), stock.getThicknessMm());
            notes.add("only the glass's colour in daylight is known: its spectrum is a plausible one, other lights are an estimate");
            if (stock.isOpal() && thicknessMm != null && thicknessMm != stock.getThicknessMm()) {
                notes.add("opal glass scatters: another thickness than the measured one is only a rough guess");
            }
        }
        return thicknessMm == null ? glass : glass.atThickness(thicknessMm);
    }

    private void requireThickness(String option, Double mm) {
        if (mm != null && !(mm >= 0.1 && mm <= 100)) {
            throw common.wrong(option + " takes 0.1 to 100 mm, not " + mm + ".");
        }
    }

    private static Spectrum spectrum(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new Refusal(file.toString(), "there is no such file", "name a CSV with the columns nm,transmittance");
        }
        try {
            return SpectrumFile.read(String.valueOf(file.getFileName()), Files.readString(file, StandardCharsets.UTF_8));
        } catch (MalformedInputException notText) {
            throw new Refusal(file.toString(), "it is not text in UTF-8", "save it as UTF-8", notText);
        }
    }

    private PaintFilm paint(StudioColours tables, String word, List<String> notes) {
        if (word.startsWith("#")) {
            return PaintFilm.coloured(word.toLowerCase(Locale.ROOT), colour("--paint", word));
        }
        Paint paint = tables.paint(word).orElseThrow(() -> unknown("--paint", word, tables.paintNames()));
        if (paint.isContainsLead() || paint.isContainsCadmium()) {
            caution(paint, notes);
        }
        return PaintFilm.coloured(paint.getName(), Srgb.parse(paint.getColour()).orElseThrow());
    }

    private static void caution(Paint paint, List<String> notes) {
        String caution = "'" + paint.getName() + "' contains " + (paint.isContainsLead() && paint.isContainsCadmium()
                ? "lead and cadmium"
                : paint.isContainsLead() ? "lead" : "cadmium")
                + ": wet-clean its dust, wear a fitted respirator, keep it off anything that touches food";
        if (!notes.contains(caution)) {
            notes.add(caution);
        }
    }

    private Srgb colour(String option, String word) {
        return Srgb.parse(word).orElseThrow(() -> common.wrong(option + " takes a colour as # and six hexadecimal digits, not '" + word + "'."));
    }

    private RuntimeException unknown(String option, String word, List<String> names) {
        return common.wrong(option + " '" + word + "' is not in the studio tables" + (names.isEmpty()
                ? ", which the launcher did not name; give #rrggbb."
                : "; they have " + String.join(", ", names) + ". Or give #rrggbb."));
    }

    private static List<String> words(Glass glass, List<Matt> matts, List<LightRow> rows, String with, List<String> notes) {
        List<String> words = new ArrayList<>();
        words.add(glass.name() + ", " + Units.plain(glass.thicknessMm()) + " mm, with "
                + String.join(" and ", matts.stream().map(m -> String.format(Locale.ROOT, "%s covering %.1f %%", m.film().name(),
                        100 * m.coverage())).toList()));
        for (LightRow row : rows) {
            String verdict = with.startsWith("#") ? " (" + ColourMatch.verdictOf(row.deltaE2000).words() + ")" : "";
            words.add(String.format(Locale.ROOT, "  %s: %s, L* %.2f a* %.2f b* %.2f, lets through %.1f %%, CIEDE2000 %.2f from %s%s%s", row.light,
                    row.srgb, row.lab.get(0),
                    row.lab.get(1), row.lab.get(2), 100 * row.transmittance, row.deltaE2000, with, verdict,
                    row.outOfGamut ? "; stronger than the screen can show" : ""));
        }
        words.add("Eye used to the light (Bradford).");
        notes.forEach(note -> words.add("Note: " + note + "."));
        return words;
    }
}
