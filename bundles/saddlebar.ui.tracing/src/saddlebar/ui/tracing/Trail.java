package saddlebar.ui.tracing;

import java.time.Instant;
import java.util.List;

import saddlebar.production.trace.SettingRow;

/**
 * The way back from one record, ready to be shown.
 *
 * @param title    what it leads to
 * @param steps    the earliest first
 * @param links    index of the later step, index of the earlier one
 * @param settings then and now
 */
record Trail(String title, List<Step> steps, List<int[]> links, List<SettingRow> settings) {
    static final Trail NONE = new Trail("", List.of(), List.of(), List.of());

    /** One record. */
    record Step(String id, Instant when, String kind, String place, String with, String who) {
    }

    Trail {
        steps = List.copyOf(steps);
        links = List.copyOf(links);
        settings = List.copyOf(settings);
    }
}
