package saddlebar.kiln.read;

import java.util.regex.Pattern;

import saddlebar.model.problem.Refusal;

/** Numbers in cells: a decimal point, or a decimal comma where the comma does not part the cells; no groups, no words such as NaN. */
public final class Cells {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");

    private Cells() {
    }

    /** @throws Refusal with the line and the column's own name if the cell holds no number */
    public static double number(CsvRows table, CsvRows.Row row, int column, String heading, String remedy) {
        String text = row.cell(column);
        String plain = table.decimalComma() && !text.contains(".") ? text.replace(',', '.') : text;
        if (!NUMBER.matcher(plain).matches()) {
            throw new Refusal(table.where(row), text.isEmpty() ? heading + " is empty" : heading + " is '" + text + "', which is no number", remedy);
        }
        return Double.parseDouble(plain);
    }
}
