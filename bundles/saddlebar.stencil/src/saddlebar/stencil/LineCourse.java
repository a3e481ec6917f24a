package saddlebar.stencil;

import java.util.Locale;

import saddlebar.model.problem.Refusal;

/**
 * How the lines of a line screen run. Words, as recipes and commands write them: {@code straight}; {@code rings} or {@code rings:XSHARE,YSHARE}
 * (about a point, in shares of the picture's width and height, the middle if not given); {@code waves:LENGTH_MM,HEIGHT_MM} (straight lines that
 * swing); {@code artwork} (along the contours of the artwork's own tone).
 */
public sealed interface LineCourse {
    /** Parallel lines at the recipe's angle. */
    record Straight() implements LineCourse {
    }

    /** Rings about a point, 0 0 the top left and 1 1 the bottom right of the picture; it may lie outside. */
    record Rings(double xShare, double yShare) implements LineCourse {
    }

    /** Lines at the recipe's angle that swing to either side by half the height. */
    record Waves(double lengthMm, double heightMm) implements LineCourse {
    }

    /** Along the contours of the artwork's tone, straight where it has none. */
    record Artwork() implements LineCourse {
    }

    /** @throws Refusal if the words say no course */
    static LineCourse parse(String words) {
        String text = words == null ? "" : words.strip().toLowerCase(Locale.ROOT);
        int colon = text.indexOf(':');
        String name = colon < 0 ? text : text.substring(0, colon);
        double[] numbers = colon < 0 ? new double[0] : numbers(words, text.substring(colon + 1));
        if (name.equals("straight") && numbers.length == 0) {
            return new Straight();
        }
        if (name.equals("artwork") && numbers.length == 0) {
            return new Artwork();
        }
        if (name.equals("rings") && (numbers.length == 0 || numbers.length == 2)) {
            return numbers.length == 0 ? new Rings(0.5, 0.5) : new Rings(within(words, numbers[0], -10, 10), within(words, numbers[1], -10, 10));
        }
        if (name.equals("waves") && numbers.length == 2) {
            double lengthMm = within(words, numbers[0], 1, 1000);
            return new Waves(lengthMm, within(words, numbers[1], 0, lengthMm)); // steeper ones would fold over
        }
        throw refused(words);
    }

    private static double[] numbers(String words, String list) {
        String[] parts = list.split(",", -1);
        double[] numbers = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            try {
                numbers[i] = Double.parseDouble(parts[i].strip());
            } catch (NumberFormatException noNumber) {
                throw refused(words);
            }
        }
        return numbers;
    }

    private static double within(String words, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw refused(words);
        }
        return value;
    }

    private static Refusal refused(String words) {
        return new Refusal("course", "lines cannot run as '" + words + "'",
                "take straight, rings, rings:0.5,0.5, waves:LENGTH_MM,HEIGHT_MM (1 to 1000 mm, not higher than long) or artwork");
    }
}
