package saddlebar.materials.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import saddlebar.materials.paint.PaintFlags;
import saddlebar.materials.paint.PaintMixture;
import saddlebar.materials.paint.PowderStock;
import saddlebar.model.commission.BarStock;
import saddlebar.model.commission.Kiln;
import saddlebar.model.commission.Medium;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.PaintLot;
import saddlebar.model.commission.SheetStock;
import saddlebar.model.commission.Studio;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.RecordLine;

/** Reads what the studio works with. Powder on hand: lots received, less what mixes used, more or less what stock records say. */
final class StudioReader {
    /** Hours at full power that one firing is worth where none was measured (studio setting, no source). */
    static final double FULL_POWER_H = 3;
    private static final double USUAL_MEDIUM_DENSITY = 1;

    private final Studio studio;
    private final JobRecords records;
    private final List<String> assumed;

    StudioReader(Studio studio, JobRecords records, List<String> assumed) {
        this.studio = studio;
        this.records = records;
        this.assumed = assumed;
    }

    StudioJob read() {
        Map<String, BigDecimal> sheets = new HashMap<>();
        for (SheetStock sheet : studio.getSheetStock()) {
            if (sheet.getPricePerSheet() != null) {
                sheets.putIfAbsent(sheet.getMaterial().getLiteral() + "/" + sheet.getPaper(), sheet.getPricePerSheet());
            }
        }
        Optional<Kiln> kiln = studio.getKilns().stream().findFirst();
        double shelf = kiln.map(k -> k.getShelfWidthMm() * k.getShelfDepthMm() * k.getShelves() / 1e6).orElse(0.0);
        OptionalDouble measured = records.all("fire").mapToDouble(line -> JobRecords.number(line, "energyKwh", -1)).filter(kwh -> kwh > 0).average();
        double kwh = measured.orElse(kiln.map(k -> k.getPowerKw() * FULL_POWER_H).orElse(0.0));
        Optional<BarStock> bar = studio.getBars().stream().findFirst();
        return new StudioJob(studio.getCurrency(), studio.getPaints().stream().map(this::paint).toList(), sheets, shelf, kiln.map(Kiln::getName).orElse(""),
                kwh, measured.isPresent(), new StudioJob.Bar(bar.map(BarStock::getName).orElse("bar"), bar.map(BarStock::isRound).orElse(false),
                        bar.map(BarStock::getPricePerM), bar.map(BarStock::getSoldLengthMm).filter(mm -> mm > 0)));
    }

    private PaintJob paint(Paint paint) {
        Medium medium = paint.getMedium();
        double density = medium == null ? USUAL_MEDIUM_DENSITY : medium.getDensityGPerCm3();
        if (!(paint.getPowderToMedium() >= 0.1 && paint.getPowderToMedium() <= 20 && paint.getDensityGPerCm3() >= 0.5 && paint.getDensityGPerCm3() <= 20
                && density >= 0.5 && density <= 5)) {
            throw new Refusal("paint " + paint.getName(), "its ratio or a density is out of range",
                    "put in powder to medium 0.1 to 20, powder 0.5 to 20 and medium 0.5 to 5 g/cm3");
        }
        PaintMixture mixture = new PaintMixture(paint.getPowderToMedium(), paint.getDensityGPerCm3(), density);
        return new PaintJob(paint.getId(), paint.getName(), mixture, Optional.ofNullable(paint.getPricePerKg()),
                Optional.ofNullable(medium).map(Medium::getPricePerKg),
                new PaintFlags(paint.isContainsLead(), paint.isContainsCadmium(), true, paint.isGoldBearing()), stock(paint));
    }

    private PowderStock stock(Paint paint) {
        double loose = change("mix", "paintId", paint.getId(), "lotId") + change("stock", "itemId", paint.getId(), "");
        List<PowderStock.Lot> lots = new ArrayList<>();
        for (PaintLot lot : paint.getLots()) {
            double left = lot.getMassG() + change("mix", "lotId", lot.getId(), "") + change("stock", "itemId", lot.getId(), "");
            double taken = Math.max(left < 0 ? 0 : -left, Math.min(loose, 0));
            left += taken;
            loose -= taken;
            if (left < -1e-9) {
                assumed.add("The records use more of lot " + lot.getName() + " of " + paint.getName() + " than was received; it counts as empty.");
            }
            lots.add(new PowderStock.Lot(lot.getId(), lot.getName() == null ? "" : lot.getName(), Optional.ofNullable(lot.getReceived()), Math.max(0, left)));
        }
        if (loose > 0) {
            lots.add(new PowderStock.Lot(paint.getId(), "no lot named", Optional.empty(), loose));
        }
        return new PowderStock(lots);
    }

    /** Powder in g that records add to an item; mixes take away. @param unless a setting that, if given, sends the record elsewhere */
    private double change(String kind, String key, String id, String unless) {
        return records.all(kind).filter(line -> JobRecords.text(line, key).equals(id) && (unless.isEmpty() || JobRecords.text(line, unless).isEmpty()))
                .mapToDouble(StudioReader::grams).sum();
    }

    private static double grams(RecordLine line) {
        if (line.kind().equals("mix")) {
            return -JobRecords.number(line, "powderG", 0);
        }
        double quantity = JobRecords.number(line, "quantity", 0);
        return switch (JobRecords.text(line, "unit")) {
            case "kg" -> 1000 * quantity;
            case "g", "" -> quantity;
            default -> 0;
        };
    }
}
