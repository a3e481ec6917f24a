package saddlebar.trace.suspect;

import saddlebar.trace.statistics.RankTest;

/**
 * One number that was taken on the way, compared between flawed and good work.
 *
 * @param name       of the measure, with its unit
 * @param bad        flawed units that have it
 * @param good       good units that have it
 * @param medianBad  median of the flawed
 * @param medianGood median of the good
 * @param test       by ranks
 * @param adjusted   its p adjusted for all measures tested
 * @param differs    whether adjusted is at most the share of false finds allowed
 */
public record Measured(String name, int bad, int good, double medianBad, double medianGood, RankTest test, double adjusted, boolean differs) {
}
