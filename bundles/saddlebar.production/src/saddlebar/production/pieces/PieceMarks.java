package saddlebar.production.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.problem.Refusal;

/** Finds pieces by the words of a person: numbers, ranges, groups. */
public final class PieceMarks {
    private PieceMarks() {
    }

    /**
     * @param panels of one window
     * @param words  such as {@code 3,5-9,sky}: numbers, ranges of numbers, names of groups
     * @throws Refusal naming the first word that finds no piece
     */
    public static List<Piece> pieces(List<Panel> panels, List<String> words) {
        List<Piece> all = panels.stream().flatMap(panel -> panel.getPieces().stream()).filter(piece -> !piece.isRetired()).toList();
        List<Piece> found = new ArrayList<>();
        for (String word : words) {
            List<Piece> ofWord = ofWord(all, word.strip());
            if (ofWord.isEmpty()) {
                throw new Refusal(word.strip(), "no piece has this number and no group this name", "the numbers are " + numbers(all) + groups(all));
            }
            ofWord.stream().filter(piece -> !found.contains(piece)).forEach(found::add);
        }
        return found;
    }

    private static List<Piece> ofWord(List<Piece> all, String word) {
        if (word.matches("\\d{1,6}")) {
            return all.stream().filter(piece -> piece.getNumber() == Integer.parseInt(word)).toList();
        }
        if (word.matches("\\d{1,6}-\\d{1,6}")) {
            int from = Integer.parseInt(word.substring(0, word.indexOf('-')));
            int to = Integer.parseInt(word.substring(word.indexOf('-') + 1));
            return all.stream().filter(piece -> piece.getNumber() >= from && piece.getNumber() <= to).toList();
        }
        return all.stream().filter(piece -> word.equalsIgnoreCase(piece.getGroup())).toList();
    }

    private static String numbers(List<Piece> all) {
        TreeSet<Integer> numbers = new TreeSet<>(all.stream().map(Piece::getNumber).toList());
        return numbers.isEmpty() ? "none yet" : numbers.first() + " to " + numbers.last();
    }

    private static String groups(List<Piece> all) {
        TreeSet<String> groups = new TreeSet<>(all.stream().map(Piece::getGroup).filter(group -> group != null && !group.isBlank()).toList());
        return groups.isEmpty() ? "" : ", the groups " + String.join(", ", groups);
    }

    /** A group's name as it is kept: none if blank. A number is refused, since it would name a piece. */
    public static String group(String name) {
        String plain = name.strip();
        if (plain.matches("[\\d,-]+")) {
            throw new Refusal(plain, "this would be taken for the number of a piece", "name the group by a word");
        }
        if (plain.contains(",")) {
            throw new Refusal(plain, "a group's name has no comma", "name it by one word or several");
        }
        return plain.isEmpty() ? null : plain;
    }
}
