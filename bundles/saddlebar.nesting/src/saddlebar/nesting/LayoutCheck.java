package saddlebar.nesting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Require;

/**
 * Says whether a layout may be used, apart from whatever made it: every copy there once, at an allowed angle, inside its sheet, no two
 * overlapping and none nearer to another than the gap.
 *
 * <p>Corners are rounded to a grid of one nanometre (1e-6 mm); on it, whether insides meet is decided in whole numbers of 128 bits, so that no
 * rounding can hide an overlap or invent one. Shapes may touch if the gap is 0. Distances are kept to within {@value #TOLERANCE_MM} mm. Pairs
 * are found by a sweep along x: O(n log n + pairs with overlapping boxes * corners of both).
 */
public final class LayoutCheck {
    /** How far below the gap a distance may be, for the rounding of both outlines to the grid. */
    public static final double TOLERANCE_MM = 1e-6;

    private LayoutCheck() {
    }

    /** Does the layout hold? Same as {@link #faults} being empty. */
    public static boolean holds(List<NestItem> items, List<SheetArea> sheets, double gapMm, List<Placement> placements) {
        return faults(items, sheets, gapMm, placements).isEmpty();
    }

    /**
     * What is wrong, worst first; each fault with its place on its sheet. Codes: {@code nest-unknown}, {@code nest-count}, {@code nest-angle},
     * {@code nest-outside}, {@code nest-overlap}, {@code nest-gap}.
     *
     * @param sheets usable area of each sheet, by the placements' numbers
     */
    public static List<Problem> faults(List<NestItem> items, List<SheetArea> sheets, double gapMm, List<Placement> placements) {
        Require.within("gapMm", gapMm, 0, SheetArea.LARGEST_MM);
        Map<String, NestItem> byId = new HashMap<>();
        items.forEach(item -> byId.put(item.id(), item));
        List<Problem> faults = new ArrayList<>(countFaults(items, placements));
        List<Placed> placed = new ArrayList<>();
        for (Placement p : placements) {
            NestItem item = byId.get(p.id());
            if (item == null || p.sheet() >= sheets.size()) {
                faults.add(fault("nest-unknown", p, "there is no such " + (item == null ? "item" : "sheet")));
                continue;
            }
            if (!item.turns().allows(p.rotationDeg())) {
                faults.add(fault("nest-angle", p, "it may not be turned by " + NestItem.text(p.rotationDeg()) + " degrees"));
            }
            Placed it = new Placed(p, ExactRing.of(item.outline(), p.rotationDeg(), p.xMm(), p.yMm()));
            if (it.isOutside(sheets.get(p.sheet()))) {
                faults.add(fault("nest-outside", p, "it reaches over the border of its sheet"));
            }
            placed.add(it);
        }
        faults.addAll(pairFaults(placed, gapMm));
        faults.sort(Problem.WORST_FIRST);
        return List.copyOf(faults);
    }

    private static List<Problem> countFaults(List<NestItem> items, List<Placement> placements) {
        Map<String, boolean[]> seen = new HashMap<>();
        items.forEach(item -> seen.put(item.id(), new boolean[item.quantity()]));
        List<Problem> faults = new ArrayList<>();
        for (Placement p : placements) {
            boolean[] copies = seen.get(p.id());
            if (copies != null && (p.copy() >= copies.length || copies[p.copy()])) {
                faults.add(fault("nest-count", p, p.copy() >= copies.length ? "so many copies were not asked for" : "it is placed twice"));
            } else if (copies != null) {
                copies[p.copy()] = true;
            }
        }
        for (NestItem item : items) {
            boolean[] copies = Objects.requireNonNull(seen.get(item.id()));
            for (int copy = 0; copy < copies.length; copy++) {
                if (!copies[copy]) {
                    faults.add(Problem.of("nest-count", Severity.ERROR, "item " + item.id(), "copy " + (copy + 1) + " is not placed"));
                    break;
                }
            }
        }
        return faults;
    }

    private static List<Problem> pairFaults(List<Placed> placed, double gapMm) {
        double gap = gapMm * ExactRing.PER_MM;
        double least = gap - TOLERANCE_MM * ExactRing.PER_MM;
        long reach = (long) Math.ceil(gap);
        List<Placed> byLeft = new ArrayList<>(placed);
        byLeft.sort(Comparator.comparingInt((Placed p) -> p.placement.sheet()).thenComparingLong(p -> p.ring.minX));
        List<Problem> faults = new ArrayList<>();
        for (int i = 0; i < byLeft.size(); i++) {
            Placed a = byLeft.get(i);
            for (int j = i + 1; j < byLeft.size(); j++) {
                Placed b = byLeft.get(j);
                if (b.placement.sheet() != a.placement.sheet() || b.ring.minX > a.ring.maxX + reach) {
                    break;
                }
                if (b.ring.minY > a.ring.maxY + reach || a.ring.minY > b.ring.maxY + reach) {
                    continue;
                }
                if (a.ring.overlaps(b.ring)) {
                    faults.add(fault("nest-overlap", a.placement, "it overlaps " + name(b.placement)));
                } else if (least > 0 && a.ring.distance(b.ring) < least) {
                    faults.add(fault("nest-gap", a.placement, String.format(Locale.ROOT, "it lies %.6f mm from %s instead of %s mm",
                            a.ring.distance(b.ring) / ExactRing.PER_MM, name(b.placement), NestItem.text(gapMm))));
                }
            }
        }
        return faults;
    }

    private static Problem fault(String code, Placement p, String what) {
        return Problem.at(code, Severity.ERROR, p.xMm(), p.yMm(), name(p) + " on sheet " + (p.sheet() + 1) + ": " + what);
    }

    private static String name(Placement p) {
        return "item " + p.id() + " copy " + (p.copy() + 1);
    }

    private record Placed(Placement placement, ExactRing ring) {
        boolean isOutside(SheetArea sheet) {
            return ring.minX < 0 || ring.minY < 0 || ring.maxX > ExactRing.grid(sheet.widthMm())
                    || ring.maxY > ExactRing.grid(sheet.heightMm());
        }
    }
}
