package saddlebar.kiln.chart;

/** The words of a chart, in the language of whoever looks at it. Units stay as they are. */
public record ChartWords(String temperature, String lag, String stress, String hours, String annealingPoint, String scheduled, String kiln, String core,
        String measured, String face, String centre) {
    public static final ChartWords ENGLISH = new ChartWords("Temperature", "Difference through the glass", "Stress in the glass, tension upwards", "time in h",
            "annealing point", "schedule as written", "kiln, simulated", "core of the glass", "kiln, measured", "upper face", "core");
}
