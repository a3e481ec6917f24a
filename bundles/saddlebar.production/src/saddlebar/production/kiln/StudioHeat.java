package saddlebar.production.kiln;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.glass.Vft;
import saddlebar.kiln.paint.PaintFlux;
import saddlebar.kiln.paint.PaintKind;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.Segment;
import saddlebar.kiln.table.KilnTables;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.FiringSegment;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Paint;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.StudioLibrary;

/** The studio's glasses, kilns, paints and schedules as the kiln's physics takes them. What the studio says of itself comes before the tables. */
public final class StudioHeat {
    private final KilnTables tables;

    private StudioHeat(KilnTables tables) {
        this.tables = tables;
    }

    public static StudioHeat of(KilnTables tables) {
        return new StudioHeat(tables);
    }

    /** With the tables that came with the program, if the launcher named their folder. */
    public static StudioHeat installed() throws IOException {
        String folder = System.getProperty(StudioLibrary.PROPERTY);
        return new StudioHeat(folder == null || folder.isBlank() ? KilnTables.builtIn() : KilnTables.read(Path.of(folder)));
    }

    /** By its own constants where it has all three, else by its heat model; a model that no table knows counts as float. */
    public Glass glass(GlassStock stock) {
        String name = named(stock.getName(), "glass");
        try {
            Glass base = Optional.ofNullable(stock.getHeatModel()).flatMap(tables::glass).orElseGet(Glass::floatGlass).named(name);
            if (stock.getViscosityA() != null && stock.getViscosityBK() != null && stock.getViscosityT0C() != null) {
                base = Glass.sodaLime(name, new Vft(stock.getViscosityA(), stock.getViscosityBK(), stock.getViscosityT0C()))
                        .withExpansion(base.expansionPerK());
            }
            return stock.getExpansionPerMillionK() == null ? base : base.withExpansion(stock.getExpansionPerMillionK() / 1e6);
        } catch (IllegalArgumentException outOfRange) {
            throw refused("glass " + name, outOfRange);
        }
    }

    /** With the figures that were learnt from its logs, where it has all four. */
    public Kiln kiln(saddlebar.model.commission.Kiln kiln) {
        String name = named(kiln.getName(), "kiln");
        try {
            double shelfM2 = kiln.getShelfWidthMm() * kiln.getShelfDepthMm() / 1e6 * Math.max(1, kiln.getShelves());
            if (kiln.getChamberJPerK() != null && kiln.getLiningJPerK() != null && kiln.getToLiningWPerK() != null && kiln.getToRoomWPerK() != null) {
                return new Kiln(name, kiln.getMaxC(), kiln.getPowerKw() * 1000, kiln.getChamberJPerK(), kiln.getLiningJPerK(), kiln.getToLiningWPerK(),
                        kiln.getToRoomWPerK(), shelfM2);
            }
            return Kiln.fromTable(name, shelfM2, kiln.getMaxC(), kiln.getMaxRateKPerH(), kiln.getNaturalFallKPerH(), kiln.getPowerKw());
        } catch (IllegalArgumentException outOfRange) {
            throw refused("kiln " + name, outOfRange);
        }
    }

    /** Empty where the studio's paint tells no range in which it matures. */
    public Optional<PaintFlux> paint(Paint paint) {
        String name = named(paint.getName(), "paint");
        if (!(paint.getMaturingFromC() > 0 && paint.getMaturingToC() > paint.getMaturingFromC())) {
            return Optional.empty();
        }
        PaintKind kind = Optional.ofNullable(paint.getKind()).flatMap(model -> PaintKind.of(model.getLiteral())).orElse(PaintKind.MATT);
        try {
            return Optional.of(PaintFlux.of(name, kind, paint.getMaturingFromC(), paint.getMaturingToC(), Glass.DGG_I));
        } catch (IllegalArgumentException outOfRange) {
            throw refused("paint " + name, outOfRange);
        }
    }

    /** @throws Refusal if it has no segment, or one that no kiln can run */
    public static Schedule schedule(FiringSchedule schedule) {
        String name = named(schedule.getName(), "schedule");
        if (schedule.getSegments().isEmpty()) {
            throw new Refusal("schedule " + name, "it has no segment", "add at least one with its target");
        }
        try {
            return new Schedule(name, schedule.getSegments().stream().map(StudioHeat::segment).toList());
        } catch (IllegalArgumentException outOfRange) {
            throw refused("schedule " + name, outOfRange);
        }
    }

    private static Segment segment(FiringSegment segment) {
        double rate = segment.getRateKPerH() == null ? 0 : segment.getRateKPerH();
        return new Segment(segment.getName() == null ? "" : segment.getName(), rate, segment.getTargetC(), segment.getSoakMin());
    }

    /** New segments for the model; a segment as fast as the kiln goes has no rate there. Vents and notes of segments of the same name are kept. */
    public static List<FiringSegment> segments(Schedule schedule, List<FiringSegment> before) {
        return schedule.segments().stream().map(segment -> {
            FiringSegment made = CommissionFactory.eINSTANCE.createFiringSegment();
            made.setName(segment.name());
            made.setRateKPerH(segment.fullRate() ? null : segment.rateKPerH());
            made.setTargetC(segment.targetC());
            made.setSoakMin(segment.soakMin());
            before.stream().filter(old -> segment.name().equals(old.getName())).findFirst().ifPresent(old -> {
                made.setVent(old.isVent());
                made.setNote(old.getNote());
            });
            return made;
        }).toList();
    }

    private static String named(String name, String otherwise) {
        return name == null || name.isBlank() ? otherwise : name;
    }

    private static Refusal refused(String where, IllegalArgumentException outOfRange) {
        return new Refusal(where, outOfRange.getMessage(), "correct it in the studio", outOfRange);
    }
}
