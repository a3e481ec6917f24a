package saddlebar.trace.lineage;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import saddlebar.model.index.Role;
import saddlebar.trace.lineage.ExposedPiece.State;

/** The way forward, told by pieces: every print that met a thing, and what became of it. */
public final class Exposure {
    private static final String PRINT = "print=";

    private final Lineage lineage;

    public Exposure(Lineage lineage) {
        this.lineage = lineage;
    }

    /**
     * Prints that met a level of a factor: what was printed with it, from it, or on what was made from it.
     *
     * @param factor  word of a column; {@code who} did the print, {@code fired_by} the firing; {@code when} is the day of the print, {@code fired_on} of the firing
     * @param level   its value
     */
    public List<ExposedPiece> ofLevel(String factor, String level) {
        return switch (factor) {
            case "who" -> of(lineage.naming("who=" + level, List.of(Role.BY)).stream().filter(deed -> deed.kind().equals("pull")).toList());
            case "fired_by" -> of(lineage.naming("who=" + level, List.of(Role.BY)).stream().filter(deed -> deed.kind().equals("fire")).toList());
            case "when" -> of(lineage.naming("day=" + level, List.of(Role.ABOUT)).stream().filter(deed -> deed.kind().equals("pull")).toList());
            case "fired_on" -> of(lineage.naming("day=" + level, List.of(Role.ABOUT)).stream().filter(deed -> deed.kind().equals("fire")).toList());
            default -> of(lineage.naming(factor + "=" + level, List.of(Role.USED, Role.MADE, Role.ABOUT)).stream()
                    .filter(deed -> !deed.kind().equals("defect") && !deed.kind().equals("remake")).toList());
        };
    }

    /** Levels of a factor that any record tells, in order. */
    public List<String> levels(String factor, int most) {
        String start = switch (factor) {
            case "fired_by" -> "who=";
            case "when", "fired_on" -> "day=";
            default -> factor + "=";
        };
        return lineage.thingsFrom(start, most).stream().map(thing -> thing.substring(start.length())).toList();
    }

    /** Prints that follow from these records. */
    public List<ExposedPiece> of(Collection<Deed> from) {
        Set<Deed> met = new LinkedHashSet<>();
        Set<String> prints = new LinkedHashSet<>();
        for (Deed deed : lineage.forward(from, Integer.MAX_VALUE).deeds()) {
            deed.record().things(Role.MADE).stream().filter(thing -> thing.startsWith(PRINT)).forEach(print -> {
                met.add(deed);
                prints.add(print);
            });
        }
        List<ExposedPiece> found = new ArrayList<>();
        prints.forEach(print -> unitsOf(print).forEach(unit -> {
            if (unit.deeds.stream().anyMatch(met::contains)) {
                found.add(unit.piece());
            }
        }));
        return sorted(found);
    }

    /** All prints of a piece or of one layer on it, as they stand. */
    public List<ExposedPiece> ofPrints(String pieceId) {
        List<ExposedPiece> found = new ArrayList<>();
        lineage.thingsFrom(PRINT + pieceId + "/", Integer.MAX_VALUE).forEach(print -> unitsOf(print).forEach(unit -> found.add(unit.piece())));
        return sorted(found);
    }

    private static List<ExposedPiece> sorted(List<ExposedPiece> pieces) {
        return pieces.stream().sorted(Comparator.comparing(ExposedPiece::window).thenComparing(piece -> number(piece.piece()))
                .thenComparing(ExposedPiece::piece).thenComparing(ExposedPiece::layer).thenComparing(ExposedPiece::layerId)
                .thenComparing(ExposedPiece::time)).toList();
    }

    private static int number(String word) {
        return word.matches("\\d{1,9}") ? Integer.parseInt(word) : Integer.MAX_VALUE;
    }

    private static final class Unit {
        private final List<Deed> deeds = new ArrayList<>();
        private final String pieceId;
        private final String layerId;
        private final int time;
        private State state = State.PRINTED;
        private boolean bad;

        Unit(String print, int time) {
            int slash = print.indexOf('/');
            this.pieceId = print.substring(PRINT.length(), slash);
            this.layerId = print.substring(slash + 1);
            this.time = time;
        }

        ExposedPiece piece() {
            return new ExposedPiece(pieceId, layerId, word("window"), word("piece"), word("layer"), time, state, bad);
        }

        /** From whichever record says it; one that speaks of many pieces says no number. */
        private String word(String column) {
            return deeds.stream().map(deed -> deed.word(column)).filter(word -> !word.isEmpty()).findFirst().orElse("");
        }
    }

    /** The prints of one layer on one piece, each with all that was done to it. */
    private List<Unit> unitsOf(String print) {
        Set<Deed> all = new TreeSet<>(Deed.IN_TIME);
        all.addAll(lineage.naming(print, List.of(Role.MADE, Role.USED)));
        all.addAll(lineage.naming("prints=" + print.substring(PRINT.length(), print.indexOf('/')), List.of(Role.USED)));
        List<Unit> units = new ArrayList<>();
        String panel = "";
        for (Deed deed : all) {
            if (deed.record().things(Role.MADE).contains(print) && (units.isEmpty() || deed.kind().equals("pull"))) {
                units.forEach(before -> before.state = State.REMADE);
                units.add(new Unit(print, units.size() + 1));
            }
            if (!units.isEmpty()) {
                Unit unit = units.get(units.size() - 1);
                unit.deeds.add(deed);
                switch (deed.kind()) {
                    case "fire" -> unit.state = State.FIRED;
                    case "glaze" -> {
                        unit.state = State.GLAZED;
                        panel = deed.record().things(Role.MADE).stream().filter(thing -> thing.startsWith("glazed=")).findFirst().orElse("");
                    }
                    case "defect" -> unit.bad = true;
                    case "remake" -> unit.state = State.TO_REMAKE;
                    default -> { // a pull leaves it as it was begun
                    }
                }
            }
        }
        if (!panel.isEmpty() && !units.isEmpty() && !lineage.naming(panel, List.of(Role.USED)).isEmpty()) {
            Unit last = units.get(units.size() - 1);
            last.state = last.state == State.GLAZED ? State.FIXED : last.state;
        }
        return units;
    }
}
