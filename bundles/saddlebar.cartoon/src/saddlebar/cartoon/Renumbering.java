package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import saddlebar.model.problem.Problem;

/** Gives the pieces of a cartoon other numbers, in neighbours and problems too. */
final class Renumbering {
    /** How problems name pieces, in {@code where} and in the message: {@code piece 12}. */
    private static final Pattern PIECE = Pattern.compile("\\b([Pp]iece )(\\d+)\\b");

    private Renumbering() {
    }

    /**
     * @param newByOld a new number for every piece of the cartoon, no two alike
     * @throws IllegalArgumentException if a piece has no new number or two get the same
     */
    static Cartoon of(Cartoon cartoon, Map<Integer, Integer> newByOld) {
        var taken = new HashSet<Integer>();
        var pieces = new ArrayList<CartoonPiece>();
        for (CartoonPiece piece : cartoon.pieces()) {
            int number = number(newByOld, piece.number());
            if (!taken.add(number)) {
                throw new IllegalArgumentException("two pieces are to get number " + number);
            }
            List<Integer> neighbours = piece.neighbours().stream().map(old -> number(newByOld, old)).sorted().toList();
            pieces.add(new CartoonPiece(number, piece.face(), piece.glass(), piece.areaMm2(), piece.netAreaMm2(), piece.perimeterMm(),
                    piece.label(), piece.inradiusMm(), neighbours, piece.problems()));
        }
        pieces.sort(Comparator.comparingInt(CartoonPiece::number));
        List<Problem> problems = cartoon.problems().stream().map(problem -> new Problem(problem.code(), problem.severity(),
                reworded(problem.where(), newByOld), problem.at(), reworded(problem.message(), newByOld)))
                .sorted(Problem.WORST_FIRST).toList();
        List<Relief> reliefs = cartoon.reliefs().stream().map(relief -> relief.ofPiece(number(newByOld, relief.piece()))).toList();
        return new Cartoon(cartoon.panel(), pieces, problems, cartoon.euler(), Optional.empty(), reliefs, cartoon.joints());
    }

    private static int number(Map<Integer, Integer> newByOld, int old) {
        Integer number = newByOld.get(old);
        if (number == null) {
            throw new IllegalArgumentException("piece " + old + " has no new number");
        }
        return number;
    }

    private static String reworded(String words, Map<Integer, Integer> newByOld) {
        return PIECE.matcher(words).replaceAll(found -> {
            Integer number = newByOld.get(Integer.valueOf(found.group(2)));
            return Matcher.quoteReplacement(found.group(1) + (number == null ? found.group(2) : number.toString()));
        });
    }
}
