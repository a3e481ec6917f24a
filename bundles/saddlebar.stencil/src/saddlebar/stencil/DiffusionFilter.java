package saddlebar.stencil;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How error diffusion spreads what a px got too much or too little of, by the names that recipes and commands use. */
public enum DiffusionFilter {
    /** X 7 / 3 5 1, of 16. Source: Floyd and Steinberg, An adaptive algorithm for spatial greyscale, Proc. SID 17(2), 1976, 75-77. */
    FLOYD_STEINBERG("floyd-steinberg"),
    /** X 7 5 / 3 5 7 5 3 / 1 3 5 3 1, of 48. Source: Jarvis, Judice and Ninke, Comp. Graphics Image Proc. 5, 1976, 13-40. */
    JARVIS_JUDICE_NINKE("jarvis-judice-ninke"),
    /** X 8 4 / 2 4 8 4 2 / 1 2 4 2 1, of 42. Source: Stucki, IBM Research Report RZ1060, 1981. */
    STUCKI("stucki"),
    /**
     * Right, down-left and down, weights by tone. Source: Ostromoukhov, A simple and efficient error-diffusion algorithm, SIGGRAPH 2001,
     * 567-572, appendix.
     */
    OSTROMOUKHOV("ostromoukhov");

    private final String key;

    DiffusionFilter(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }

    public static Optional<DiffusionFilter> named(String key) {
        return Arrays.stream(values()).filter(filter -> filter.key.equals(key)).findFirst();
    }

    public static List<String> names() {
        return Arrays.stream(values()).map(DiffusionFilter::key).toList();
    }
}
