package saddlebar.artwork.svg;

import java.util.Locale;
import java.util.Optional;

/**
 * Colours as newer style sheets write them (CSS Color 4): {@code #rgba}, {@code #rrggbbaa}, {@code rgb(r g b / a)}, {@code rgba()},
 * {@code hsl()}, {@code hsla()}, {@code transparent}; told apart into an sRGB colour and an opacity.
 */
final class ColourWords {
    /** @param opacity 0 to 1 */
    record Colour(int rgb, double opacity) {
        String hex() {
            return String.format(Locale.ROOT, "#%06x", rgb);
        }
    }

    private ColourWords() {
    }

    static Optional<Colour> parse(String words) {
        String text = words.strip().toLowerCase(Locale.ROOT);
        try {
            if ("transparent".equals(text)) {
                return Optional.of(new Colour(0, 0));
            } else if (text.startsWith("#")) {
                return hex(text.substring(1));
            }
            int bracket = text.indexOf('(');
            if (bracket < 0 || !text.endsWith(")")) {
                return Optional.empty();
            }
            String[] parts = text.substring(bracket + 1, text.length() - 1).strip().split("[\\s,/]+");
            if (parts.length != 3 && parts.length != 4) {
                return Optional.empty();
            }
            double opacity = parts.length == 4 ? clamped(share(parts[3], 1)) : 1;
            return switch (text.substring(0, bracket)) {
                case "rgb", "rgba" -> Optional.of(new Colour(code(share(parts[0], 255)) << 16 | code(share(parts[1], 255)) << 8
                        | code(share(parts[2], 255)), opacity));
                case "hsl", "hsla" -> Optional.of(new Colour(hsl(degrees(parts[0]), share(parts[1], 100), share(parts[2], 100)), opacity));
                default -> Optional.empty();
            };
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static Optional<Colour> hex(String digits) {
        String full = digits;
        if (digits.length() == 3 || digits.length() == 4) {
            StringBuilder twice = new StringBuilder();
            for (char c : digits.toCharArray()) {
                twice.append(c).append(c);
            }
            full = twice.toString();
        }
        if (full.length() != 6 && full.length() != 8) {
            return Optional.empty();
        }
        long value = Long.parseLong(full, 16);
        return Optional.of(full.length() == 6 ? new Colour((int) value, 1) : new Colour((int) (value >> 8), (value & 0xFF) / 255.0));
    }

    /** A number of so many, or a percentage, as a share of 1. */
    private static double share(String word, double whole) {
        return word.endsWith("%") ? Double.parseDouble(word.substring(0, word.length() - 1)) / 100 : Double.parseDouble(word) / whole;
    }

    private static double degrees(String word) {
        if (word.endsWith("turn")) {
            return 360 * Double.parseDouble(word.substring(0, word.length() - 4));
        } else if (word.endsWith("rad")) {
            return Math.toDegrees(Double.parseDouble(word.substring(0, word.length() - 3)));
        }
        return Double.parseDouble(word.endsWith("deg") ? word.substring(0, word.length() - 3) : word);
    }

    private static double clamped(double share) {
        return Math.max(0, Math.min(1, share));
    }

    private static int code(double share) {
        return (int) Math.round(255 * clamped(share));
    }

    /** CSS Color 4, section 7: each channel is l - a max(-1, min(k - 3, 9 - k, 1)), k = (n + h / 30) mod 12, a = s min(l, 1 - l). */
    private static int hsl(double degrees, double saturation, double lightness) {
        double l = clamped(lightness);
        double a = clamped(saturation) * Math.min(l, 1 - l);
        int rgb = 0;
        for (int n : new int[] {0, 8, 4}) {
            double k = ((n + degrees / 30) % 12 + 12) % 12;
            rgb = rgb << 8 | code(l - a * Math.max(-1, Math.min(Math.min(k - 3, 9 - k), 1)));
        }
        return rgb;
    }
}
