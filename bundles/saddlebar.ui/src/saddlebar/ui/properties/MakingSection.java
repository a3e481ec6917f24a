package saddlebar.ui.properties;

import java.util.List;

/** How the chosen thing is made, and what has been made of it. */
public final class MakingSection extends RowsSection {
    @Override
    List<Row> rows(RowsOf rowsOf, Object shown) {
        return rowsOf.making(shown);
    }
}
