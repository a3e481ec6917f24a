package saddlebar.model.store;

import java.util.LinkedHashMap;
import java.util.Map;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;

/**
 * What the code on a card says: a sentence that a person reads as well as a program. {@code piece W01/12 matt}, {@code sheet 3}, {@code frame S04},
 * {@code mix M07}, {@code firing F031}, each after the word {@code saddlebar}.
 */
public final class CardText {
    private static final String START = "saddlebar ";

    private CardText() {
    }

    /** @param layer may be empty: all of the piece */
    public static String piece(String window, String piece, String layer) {
        return START + "piece " + Require.text("window", window) + "/" + Require.text("piece", piece) + (layer.isEmpty() ? "" : " " + layer);
    }

    public static String sheet(int number) {
        return START + "sheet " + number;
    }

    public static String frame(String name) {
        return START + "frame " + Require.text("name", name);
    }

    public static String mix(String name) {
        return START + "mix " + Require.text("name", name);
    }

    public static String firing(String name) {
        return START + "firing " + Require.text("name", name);
    }

    /**
     * The words of a record that a card says: {@code window}, {@code piece}, {@code layer}, {@code sheet}, {@code screen}, {@code mix}, {@code firing}.
     *
     * @throws Refusal if it is no such card
     */
    public static Map<String, String> words(String text) {
        String[] parts = text.strip().split("\\s+", 3);
        Map<String, String> words = new LinkedHashMap<>();
        if (parts.length == 3 && parts[0].equals(START.strip())) {
            String rest = parts[2];
            switch (parts[1]) {
                case "sheet" -> words.put("sheet", rest);
                case "frame" -> words.put("screen", rest);
                case "mix" -> words.put("mix", rest);
                case "firing" -> words.put("firing", rest);
                case "piece" -> piece(rest, words);
                default -> words.clear();
            }
        }
        if (words.isEmpty()) {
            throw new Refusal("'" + text + "'", "is no card of this studio", "read the code on a sheet, frame or piece card, such as: saddlebar piece W01/12");
        }
        return words;
    }

    private static void piece(String rest, Map<String, String> words) {
        String[] name = rest.split("\\s+", 2);
        int slash = name[0].lastIndexOf('/');
        if (slash > 0 && slash < name[0].length() - 1) {
            words.put("window", name[0].substring(0, slash));
            words.put("piece", name[0].substring(slash + 1));
            if (name.length > 1) {
                words.put("layer", name[1]);
            }
        }
    }
}
