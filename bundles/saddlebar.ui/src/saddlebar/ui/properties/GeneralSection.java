package saddlebar.ui.properties;

import java.util.List;

/** What the chosen thing is. */
public final class GeneralSection extends RowsSection {
    @Override
    List<Row> rows(RowsOf rowsOf, Object shown) {
        return rowsOf.general(shown);
    }
}
