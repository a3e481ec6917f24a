package saddlebar.production.facts;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.commission.ToneMode;
import saddlebar.model.commission.TonePoint;
import saddlebar.stencil.tone.WedgeReading;

/**
 * Which of a studio's calibrations a layer uses: the one that its recipe names, or what has superseded that; else the newest for its paint, mesh and
 * method.
 */
public final class CalibrationChoice {
    private CalibrationChoice() {
    }

    /** Empty unless the recipe asks for calibrated tone and there is one with readings. */
    public static Optional<ToneCalibration> of(DesignLayer layer, Optional<Mesh> mesh, Optional<Studio> studio) {
        if (layer.getRecipe() == null || layer.getRecipe().getToneMode() != ToneMode.CALIBRATED) {
            return Optional.empty();
        }
        if (layer.getRecipe().getCalibration() != null) {
            return Optional.of(newest(layer.getRecipe().getCalibration())).filter(found -> !found.getPoints().isEmpty());
        }
        return studio.flatMap(found -> of(found, layer.getPaint(), mesh.orElse(null), layer.getRecipe().getMethod()));
    }

    /** The newest of a studio for a paint, a mesh and a method that nothing has superseded. */
    public static Optional<ToneCalibration> of(Studio studio, Paint paint, Mesh mesh, String method) {
        return studio.getCalibrations().stream()
                .filter(found -> found.getSupersededBy() == null && !found.getPoints().isEmpty() && found.getPaint() == paint && found.getMesh() == mesh
                        && Objects.equals(found.getMethod(), method))
                .max(Comparator.comparing((ToneCalibration found) -> found.getMeasured() == null ? LocalDate.MIN : found.getMeasured())
                        .thenComparing(ToneCalibration::getName, Comparator.nullsFirst(Comparator.naturalOrder())));
    }

    /** What stands at the end of what superseded it; itself if nothing did, or if they lead round in a ring. */
    public static ToneCalibration newest(ToneCalibration calibration) {
        Set<ToneCalibration> seen = new HashSet<>();
        ToneCalibration at = calibration;
        while (at.getSupersededBy() != null) {
            if (!seen.add(at)) {
                return calibration;
            }
            at = at.getSupersededBy();
        }
        return at;
    }

    /** Its readings, rising. */
    public static List<WedgeReading> readings(ToneCalibration calibration) {
        return calibration.getPoints().stream().sorted(Comparator.comparingDouble(TonePoint::getNominal))
                .map(point -> new WedgeReading(point.getNominal(), point.getEffective())).toList();
    }
}
