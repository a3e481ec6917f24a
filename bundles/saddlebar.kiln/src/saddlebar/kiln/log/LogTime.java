package saddlebar.kiln.log;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * ISO 8601 times of a log: {@code 2026-03-01T08:00:00Z}, with an offset, or local without one; a blank in place of T is taken, seconds may be
 * missing. A file uses one of the two kinds.
 */
final class LogTime {
    private LogTime() {
    }

    /** Seconds since 1970 in UTC, and whether the text had an offset. */
    record Instant(double seconds, boolean offset) {
    }

    static Optional<Instant> parse(String text) {
        String iso = text.strip().replace(' ', 'T');
        try {
            if (iso.matches(".*T.*(Z|[+-]\\d\\d(:?\\d\\d)?)")) {
                String widened = iso.replaceFirst("([+-]\\d\\d)(\\d\\d)$", "$1:$2").replaceFirst("([+-]\\d\\d)$", "$1:00");
                OffsetDateTime time = OffsetDateTime.parse(widened);
                return Optional.of(new Instant(time.toEpochSecond() + time.getNano() / 1e9, true));
            }
            LocalDateTime time = LocalDateTime.parse(iso);
            return Optional.of(new Instant(time.toEpochSecond(ZoneOffset.UTC) + time.getNano() / 1e9, false));
        } catch (DateTimeException noTime) {
            return Optional.empty();
        }
    }
}
