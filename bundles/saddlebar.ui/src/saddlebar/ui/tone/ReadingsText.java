package saddlebar.ui.tone;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.tone.MeasuredStep;
import saddlebar.stencil.tone.MeasuredWedge;
import saddlebar.stencil.tone.WedgeReading;
import saddlebar.ui.screening.ScreenWords;

/**
 * Readings of a wedge as they are typed: a line a step, the tone in per cent and what was measured of it. A decimal comma is as good as a point.
 */
public final class ReadingsText {
    /** What was measured of a step. */
    public enum Measure {
        /** Optical density. */
        DENSITY,
        /** Share of the light, per cent. */
        TRANSMITTANCE,
        /** Share that paint covers, per cent. */
        COVERAGE
    }

    private ReadingsText() {
    }

    /**
     * Coverages in the order of the lines; lines without a reading are left out.
     *
     * @throws Refusal in words, with the line, if something typed is no reading, or as {@link MeasuredWedge#readings}
     */
    public static List<WedgeReading> read(String text, Measure measure) {
        List<MeasuredStep> steps = new ArrayList<>();
        List<WedgeReading> direct = new ArrayList<>();
        int line = 0;
        for (String row : text.split("\\R", -1)) {
            line++;
            String[] words = row.strip().replace(',', '.').replace("%", " ").strip().split("[\\s;]+");
            if (words.length < 2) {
                if (words[0].isEmpty()) {
                    continue;
                }
                number(words[0], line, 0, 100);
                continue;
            }
            double tone = number(words[0], line, 0, 100) / 100;
            switch (measure) {
                case DENSITY -> steps.add(new MeasuredStep(tone, number(words[1], line, -0.5, 6)));
                case TRANSMITTANCE -> steps.add(MeasuredStep.ofTransmittance(tone, number(words[1], line, 1e-4, 110) / 100));
                default -> direct.add(new WedgeReading(tone, number(words[1], line, 0, 100) / 100));
            }
        }
        return measure == Measure.COVERAGE ? direct : MeasuredWedge.readings(steps, 1);
    }

    private static double number(String word, int line, double least, double most) {
        double value;
        try {
            value = Double.parseDouble(word);
        } catch (NumberFormatException e) {
            throw new Refusal(NLS.bind(ScreenWords.Tone_line, line), NLS.bind(ScreenWords.Tone_noNumber, word), ScreenWords.Tone_writeNumber, e);
        }
        if (!(value >= least && value <= most)) {
            throw new Refusal(NLS.bind(ScreenWords.Tone_line, line), NLS.bind(ScreenWords.Tone_outOfRange, word),
                    NLS.bind(ScreenWords.Tone_writeWithin, plain(least), plain(most)));
        }
        return value;
    }

    /** The steps of a wedge, to be filled in. */
    public static String empty() {
        return WedgeReading.STEPS.stream().map(step -> plain(100 * step) + "  ").collect(Collectors.joining("\n"));
    }

    /** Readings as coverages in per cent. */
    public static String of(List<WedgeReading> readings) {
        return readings.stream().map(reading -> plain(100 * reading.nominal()) + "  " + plain(100 * reading.effective())).collect(Collectors.joining("\n"));
    }

    private static String plain(double value) {
        double rounded = Math.rint(value * 100) / 100;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.format(Locale.ROOT, "%.2f", rounded);
    }
}
