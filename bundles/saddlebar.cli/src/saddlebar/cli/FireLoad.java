package saddlebar.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import picocli.CommandLine.Option;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.fire.Shelf;
import saddlebar.kiln.glass.FusedLayers;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.glass.GlassAnalysis;
import saddlebar.kiln.glass.Vft;
import saddlebar.kiln.plate.MaxwellPlate;
import saddlebar.kiln.table.KilnTables;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Units;

/** What lies in the kiln, by the words of the command line: which glass, how thick, how large, on what. */
public final class FireLoad {
    /** Smaller pieces bow freely by micrometres: studio setting, no source. */
    private static final double FLAT_FROM_MM = 300;

    @Option(names = "--glass", paramLabel = "NAME", defaultValue = "float",
            description = "float, srm-710a, srm-710 or a glass of the studio's tables; float if not given.")
    private String glassName;

    @Option(names = "--glass-points", paramLabel = "LOG=C,LOG=C,LOG=C",
            description = "Three measured points in place of --glass: log10 of the viscosity in Pa s and degC, such as 1.5=1319,6.6=731,12=545.")
    private String points;

    @Option(names = "--glass-analysis", paramLabel = "OXIDE=PERCENT,...",
            description = "A chemical analysis in per cent by mass in place of --glass, such as SiO2=71.8,Al2O3=1.2,Na2O=15,CaO=6.7,MgO=4.2.")
    private String analysis;

    @Option(names = "--over", paramLabel = "GLASS=MM", description = "A second glass of the studio's tables fused on top, and its thickness.")
    private String over;

    @Option(names = "--thickness-mm", paramLabel = "T", defaultValue = "3", description = "Thickest glass of the load in mm; 3 if not given.")
    private double thicknessMm;

    @Option(names = "--largest-mm", paramLabel = "L", defaultValue = "150",
            description = "Longest side of the largest piece in mm; 150 if not given. From 300 on its own weight holds it flat.")
    private double largestMm;

    @Option(names = "--shelf", paramLabel = "KIND", defaultValue = "ceramic", description = "ceramic or fibre; ceramic if not given.")
    private String shelf;

    private final List<Problem> cautions = new ArrayList<>();

    /** What a person should know about the glass; filled by {@link #load}. */
    List<Problem> cautions() {
        return List.copyOf(cautions);
    }

    Load load(KilnTables tables, CommonOptions common) {
        if (!(thicknessMm >= 0.5 && thicknessMm <= 60)) {
            throw common.wrong("--thickness-mm takes 0.5 to 60 mm, not " + Units.plain(thicknessMm) + ".");
        }
        if (!(largestMm >= 5 && largestMm <= 5000)) {
            throw common.wrong("--largest-mm takes 5 to 5000 mm, not " + Units.plain(largestMm) + ".");
        }
        Glass glass = glass(tables, common);
        double all = thicknessMm + fused(glass, tables, common);
        if (all > 60) {
            throw common.wrong("both glasses together are " + Units.plain(all) + " mm thick; up to 60 mm can be computed.");
        }
        Shelf on = switch (shelf.toLowerCase(Locale.ROOT)) {
            case "ceramic" -> Shelf.USUAL;
            case "fibre" -> Shelf.FIBRE;
            default -> throw common.wrong("--shelf takes ceramic or fibre, not '" + shelf + "'.");
        };
        return Load.of(glass, all).withLargestMm(largestMm).on(on).held(largestMm < FLAT_FROM_MM ? MaxwellPlate.Hold.FREE : MaxwellPlate.Hold.FLAT);
    }

    private Glass glass(KilnTables tables, CommonOptions common) {
        if (points != null && analysis != null) {
            throw common.wrong("--glass-points and --glass-analysis tell the same thing; give one of them.");
        }
        if (points != null) {
            Map<String, Double> pairs = pairs("--glass-points", points, common);
            List<Vft.Point> measured = pairs.entrySet().stream().map(pair -> point(pair, common)).toList();
            if (measured.size() != 3) {
                throw common.wrong("--glass-points takes three points, not " + measured.size() + ".");
            }
            try {
                return Glass.sodaLime("glass of three points", Vft.through(measured.get(0), measured.get(1), measured.get(2)));
            } catch (IllegalArgumentException none) {
                throw common.wrong("--glass-points: " + none.getMessage() + ".");
            }
        }
        return analysis == null ? named("--glass", glassName, tables.glass(glassName), tables.glassNames(), common) : analysed(common);
    }

    private static Vft.Point point(Map.Entry<String, Double> pair, CommonOptions common) {
        try {
            return new Vft.Point(Double.parseDouble(pair.getKey()), pair.getValue());
        } catch (IllegalArgumentException noNumber) {
            throw common.wrong("--glass-points takes numbers such as 12=545, not '" + pair.getKey() + "=" + pair.getValue() + "'.");
        }
    }

    private Glass analysed(CommonOptions common) {
        Map<GlassAnalysis.Oxide, Double> percent = new EnumMap<>(GlassAnalysis.Oxide.class);
        pairs("--glass-analysis", analysis, common).forEach((oxide, share) -> {
            try {
                percent.put(GlassAnalysis.Oxide.valueOf(oxide.toUpperCase(Locale.ROOT)), share);
            } catch (IllegalArgumentException unknown) {
                throw common.wrong("--glass-analysis knows no oxide '" + oxide + "'. It knows " + List.of(GlassAnalysis.Oxide.values()) + ".");
            }
        });
        try {
            GlassAnalysis found = GlassAnalysis.of(percent);
            found.doubts()
                    .forEach(doubt -> cautions.add(Problem.of("glass-doubtful", Severity.WARNING, "analysis", doubt + "; expect more than 10 K of error.")));
            return Glass.sodaLime("glass by analysis", found.viscosity());
        } catch (IllegalArgumentException outOfRange) {
            throw common.wrong("--glass-analysis: " + outOfRange.getMessage() + ".");
        }
    }

    /** Thickness of the second glass, 0 if there is none. */
    private double fused(Glass lower, KilnTables tables, CommonOptions common) {
        if (over == null) {
            return 0;
        }
        Map.Entry<String, Double> pair = pairs("--over", over, common).entrySet().iterator().next();
        Glass upper = named("--over", pair.getKey(), tables.glass(pair.getKey()), tables.glassNames(), common);
        if (!(pair.getValue() >= 0.1 && pair.getValue() <= 50)) {
            throw common.wrong("--over takes 0.1 to 50 mm, not " + Units.plain(pair.getValue()) + ".");
        }
        FusedLayers layers = new FusedLayers(lower, thicknessMm, upper, pair.getValue());
        cautions.addAll(layers.cautions());
        cautions.add(Problem.of("layers-as-one", Severity.NOTE, lower.name() + " under " + upper.name(), String.format(Locale.ROOT,
                "By these figures the seam keeps %.1f MPa. The firing is computed as one plate of the lower glass.", layers.seamMpa())));
        return pair.getValue();
    }

    private static Map<String, Double> pairs(String option, String text, CommonOptions common) {
        Map<String, Double> pairs = new LinkedHashMap<>();
        for (String one : text.split("[,;]")) {
            int at = one.lastIndexOf('=');
            try {
                if (at < 1 || pairs.put(one.substring(0, at).strip(), Double.valueOf(one.substring(at + 1).strip())) != null) {
                    throw common.wrong(option + " takes each thing once as NAME=NUMBER, not '" + one + "'.");
                }
            } catch (NumberFormatException noNumber) {
                throw common.wrong(option + " takes NAME=NUMBER, not '" + one + "'.");
            }
        }
        return pairs;
    }

    static <T> T named(String option, String name, Optional<T> found, List<String> known, CommonOptions common) {
        return found.orElseThrow(() -> common.wrong(option + " knows no '" + name + "'. "
                + (known.isEmpty() ? "The studio's tables were not found." : "It knows " + String.join(", ", known) + ".")));
    }
}
