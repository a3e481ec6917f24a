package saddlebar.ui.tracing;

import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;

import saddlebar.model.commission.Piece;
import saddlebar.trace.lineage.ExposedPiece;
import saddlebar.ui.Columns;
import saddlebar.ui.desk.SelectionOf;

/** Every piece that met what was chosen; choosing one lights it on the Easel. */
public final class ExposedView extends TraceTableView<ExposedPiece> {
    @Override
    protected void createParts(Composite parent) {
        super.createParts(parent);
        getSite().setSelectionProvider(new SelectionOf(table()) {
            @Override
            protected Object thing(Object line) {
                ExposedPiece met = (ExposedPiece) line;
                Optional<Piece> piece = desk().commission().flatMap(open -> open.piece(met.window(), met.pieceId()));
                return piece.isPresent() ? piece.get() : met;
            }
        });
    }

    @Override
    protected void columns(Columns columns) {
        column(columns, Messages.Column_place, 2, "W08/88/trace", ExposedPiece::name);
        column(columns, Messages.Column_state, 1, "nachgefertigt", met -> KindWords.of(met.state()));
        column(columns, Messages.Column_defect, 1, "fehlerhaft", met -> met.bad() ? Messages.Exposed_flawed : "");
    }

    @Override
    protected List<ExposedPiece> lines(TraceDesk from) {
        return from.met().pieces();
    }

    @Override
    protected String heading(TraceDesk from) {
        return from.met().thing().isEmpty()
                ? Messages.Exposed_none
                : NLS.bind(Messages.Exposed_count,
                        new Object[] {lines(from).size(), from.met().thing(), lines(from).stream().filter(ExposedPiece::bad).count()});
    }
}
