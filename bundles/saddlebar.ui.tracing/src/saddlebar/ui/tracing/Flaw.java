package saddlebar.ui.tracing;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * A recorded defect, as it is shown.
 *
 * @param photo file of its photo, if it has one that is still what was recorded
 * @param photoLost whether it had one that is not
 * @param xMm   its place on the panel; NaN if none is told
 */
record Flaw(String id, Instant when, String place, String kind, String severity, String who, String window, String pieceId, Optional<Path> photo,
        boolean photoLost,
        double xMm, double yMm) {
}
