package saddlebar.materials.paint;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import saddlebar.model.units.Require;

/** Powder on the shelf by lots; the oldest is used up first, so that one bowl is of one lot where it can be. */
public record PowderStock(List<Lot> lots) {

    /**
     * @param id    the lot's
     * @param massG left, 0 or more
     */
    public record Lot(String id, String name, Optional<LocalDate> received, double massG) {
        public Lot {
            Require.text("id", id);
            Require.within("massG", massG, 0, 1e9);
        }
    }

    /** Powder taken from a lot for one bowl. */
    public record Draw(int bowl, String lot, double massG) {
    }

    /**
     * @param draws   what each bowl takes
     * @param buyG    what must be bought
     * @param mixedBowls bowls of more than one lot, whose colour may differ within the work
     */
    public record Plan(List<Draw> draws, double buyG, List<Integer> mixedBowls) {
    }

    public PowderStock {
        lots = lots.stream().sorted(Comparator.comparing((Lot lot) -> lot.received().orElse(LocalDate.MIN)).thenComparing(Lot::id)).toList();
    }

    public double onHandG() {
        return lots.stream().mapToDouble(Lot::massG).sum();
    }

    /** Bowls numbered from 1, each of the same mass of powder: from the oldest lot that holds a whole bowl, else from what there is, oldest first. */
    public Plan plan(int bowls, double powderGPerBowl) {
        double[] left = lots.stream().mapToDouble(Lot::massG).toArray();
        List<Draw> draws = new ArrayList<>();
        List<Integer> mixed = new ArrayList<>();
        double buy = 0;
        for (int bowl = 1; bowl <= bowls; bowl++) {
            int whole = firstWith(left, powderGPerBowl);
            if (whole >= 0) {
                left[whole] -= powderGPerBowl;
                draws.add(new Draw(bowl, lots.get(whole).name(), powderGPerBowl));
                continue;
            }
            double open = powderGPerBowl;
            int parts = 0;
            for (int i = 0; i < left.length && open > 1e-9; i++) {
                double take = Math.min(open, left[i]);
                if (take > 1e-9) {
                    left[i] -= take;
                    open -= take;
                    parts++;
                    draws.add(new Draw(bowl, lots.get(i).name(), take));
                }
            }
            if (open > 1e-9) {
                buy += open;
                parts++;
            }
            if (parts > 1) {
                mixed.add(bowl);
            }
        }
        return new Plan(draws, buy, mixed);
    }

    private static int firstWith(double[] left, double massG) {
        for (int i = 0; i < left.length; i++) {
            if (left[i] >= massG - 1e-9) {
                return i;
            }
        }
        return -1;
    }
}
