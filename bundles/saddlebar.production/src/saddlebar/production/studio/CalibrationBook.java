package saddlebar.production.studio;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.commission.TonePoint;
import saddlebar.model.units.Require;
import saddlebar.production.facts.CalibrationChoice;
import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.WedgeReading;

/**
 * Keeps tone calibrations in the studio, each with its day. A newer one for the same paint, mesh and method supersedes the one before it, which stays:
 * what was made with it can still be told. Changes the model only; the caller saves.
 */
public final class CalibrationBook {
    private CalibrationBook() {
    }

    /**
     * What was printed and measured.
     *
     * @param paint       printed with
     * @param mesh        printed through
     * @param method      key of the screening method
     * @param processKey  of the stencil process
     * @param lpi         ruling; empty where the method has none
     * @param dotMm       dots; empty where they grow
     * @param yuleNielsen with which densities were read
     * @param measured    day of the readings
     * @param source      file of the readings, or words for where they come from
     * @param readings    as measured, not pooled
     */
    public record Measured(Paint paint, Mesh mesh, String method, String processKey, OptionalDouble lpi, OptionalDouble dotMm, double yuleNielsen,
            LocalDate measured, String source, List<WedgeReading> readings) {
        public Measured {
            Objects.requireNonNull(paint, "paint");
            Objects.requireNonNull(mesh, "mesh");
            Require.text("method", method);
            Require.text("processKey", processKey);
            Require.within("yuleNielsen", yuleNielsen, 1, 3);
            Objects.requireNonNull(measured, "measured");
            Objects.requireNonNull(source, "source");
            readings = List.copyOf(readings);
        }

        /** With ruling and dots as a recipe gives them on its device. */
        public static Measured of(Paint paint, Mesh mesh, ScreeningRecipe recipe, ActualScreen actual, String processKey, double yuleNielsen,
                LocalDate measured,
                String source, List<WedgeReading> readings) {
            return new Measured(paint, mesh, recipe.method(), processKey, actual.lpi().isPresent() ? OptionalDouble.of(recipe.lpi()) : OptionalDouble.empty(),
                    actual.dotMm(), yuleNielsen, measured, source, readings);
        }
    }

    /**
     * Keeps it.
     *
     * @return what now stands in the studio
     * @throws saddlebar.model.problem.Refusal if the readings make no calibration
     */
    public static ToneCalibration keep(Studio studio, Measured measured) {
        Calibration.of(measured.readings()); // refuses what cannot be used
        Optional<ToneCalibration> before = CalibrationChoice.of(studio, measured.paint(), measured.mesh(), measured.method());
        ToneCalibration kept = CommissionFactory.eINSTANCE.createToneCalibration();
        kept.setName(name(studio, measured));
        kept.setPaint(measured.paint());
        kept.setMesh(measured.mesh());
        kept.setMethod(measured.method());
        kept.setProcessKey(measured.processKey());
        kept.setLpi(boxed(measured.lpi()));
        kept.setDotMm(boxed(measured.dotMm()));
        kept.setYuleNielsen(measured.yuleNielsen());
        kept.setMeasured(measured.measured());
        kept.setReadingsFile(measured.source());
        if (!studio.getPrinters().isEmpty()) {
            kept.setPrinter(studio.getPrinters().get(0));
        }
        for (WedgeReading reading : measured.readings()) {
            TonePoint point = CommissionFactory.eINSTANCE.createTonePoint();
            point.setNominal(reading.nominal());
            point.setEffective(reading.effective());
            kept.getPoints().add(point);
        }
        studio.getCalibrations().add(kept);
        before.ifPresent(older -> supersede(older, kept));
        return kept;
    }

    /** A wedge measured earlier but entered later does not push out a newer one. */
    private static void supersede(ToneCalibration older, ToneCalibration kept) {
        boolean isOlder = older.getMeasured() == null || !older.getMeasured().isAfter(kept.getMeasured());
        if (isOlder) {
            older.setSupersededBy(kept);
        } else {
            kept.setSupersededBy(older);
        }
    }

    private static String name(Studio studio, Measured measured) {
        String name = measured.paint().getName() + ", " + measured.mesh().getName() + ", " + measured.method() + ", " + measured.measured();
        long alike = studio.getCalibrations().stream().filter(other -> other.getName() != null && other.getName().startsWith(name)).count();
        return alike == 0 ? name : name + " (" + (alike + 1) + ")";
    }

    private static Double boxed(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
