package saddlebar.kiln.chart;

/** Lines that differ by colour and by dash, so that they can be told apart without colour. Colours: Okabe and Ito (2008), for all kinds of sight. */
enum Line {
    SCHEDULED("#000000", "6 4", 1.6), KILN("#E69F00", "", 2.2), CORE("#0072B2", "9 3 2 3", 2), MEASURED("#D55E00", "3 2", 2),
    SURFACE("#009E73", "", 2),
    CENTRE("#CC79A7", "7 3", 2), LAG("#0072B2", "", 2);

    private final String colour;
    private final String dash;
    private final double width;

    Line(String colour, String dash, double width) {
        this.colour = colour;
        this.dash = dash;
        this.width = width;
    }

    String style() {
        return "stroke=\"" + colour + "\" stroke-width=\"" + width + "\" stroke-linejoin=\"round\""
                + (dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"");
    }
}
