package saddlebar.ui.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.operations.IOperationHistory;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.LockedException;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.UnsavedWork;
import saddlebar.production.light.ArtworkShelf;
import saddlebar.production.light.ColourShelf;

/** A commission that lies open on the desk. Windows are loaded when they are first asked for. */
public final class OpenCommission {
    private final CommissionFolder folder;
    private final Optional<String> readOnlyBecause;
    private final Edits edits;
    private final ArtworkShelf shelf;
    private final ColourShelf colours = new ColourShelf();

    private OpenCommission(CommissionFolder folder, Optional<String> readOnlyBecause, IOperationHistory history) {
        this.folder = folder;
        this.readOnlyBecause = readOnlyBecause;
        this.edits = new Edits(history, folder.path().getFileName().toString());
        this.shelf = new ArtworkShelf(ArtworkReaders.ownReaders());
    }

    /**
     * Opens for writing; if somebody else is writing, for looking only.
     *
     * @throws saddlebar.model.problem.Refusal if it is no commission or cannot be read
     */
    static OpenCommission open(Path path, IOperationHistory history) throws IOException {
        try {
            return new OpenCommission(CommissionFolder.open(path, Access.WRITE), Optional.empty(), history);
        } catch (LockedException e) {
            return new OpenCommission(CommissionFolder.open(path, Access.READ), Optional.of(e.getMessage()), history);
        }
    }

    public Path path() {
        return folder.path();
    }

    public CommissionFolder folder() {
        return folder;
    }

    public Commission commission() {
        return folder.commission();
    }

    /** Its title, or its folder's name if it has none. */
    public String title() {
        String title = commission().getTitle();
        return title == null || title.isBlank() ? path().getFileName().toString() : title;
    }

    public Edits edits() {
        return edits;
    }

    public ArtworkShelf shelf() {
        return shelf;
    }

    /** The spectra of its glasses and paints. */
    public ColourShelf colours() {
        return colours;
    }

    /** Why nothing can be changed, if so. */
    public Optional<String> readOnlyBecause() {
        return readOnlyBecause;
    }

    public boolean isReadOnly() {
        return readOnlyBecause.isPresent();
    }

    public List<String> windowNames() {
        return folder.windowNames();
    }

    public boolean isLoaded(String windowName) {
        return folder.isLoaded(windowName);
    }

    /** A window, loaded now if it was not. */
    public Optional<Window> window(String name) {
        return folder.window(name);
    }

    /** A piece of a window by its lasting id. */
    public Optional<Piece> piece(String windowName, String pieceId) {
        return window(windowName).stream().flatMap(window -> window.getPanels().stream()).map(Panel::getPieces).flatMap(List::stream)
                .filter(piece -> pieceId.equals(piece.getId())).findFirst();
    }

    public boolean isDirty() {
        return edits.isDirty();
    }

    /** All or nothing. */
    public void save() throws IOException {
        folder.save();
        edits.saved();
    }

    /** What a session that died had not saved. */
    Optional<UnsavedWork> unsavedWork() throws IOException {
        return isReadOnly() ? Optional.empty() : folder.unsavedWork();
    }

    void close() throws IOException {
        boolean givenUp = isDirty();
        edits.forget();
        shelf.close();
        try {
            if (givenUp && !isReadOnly()) {
                folder.forgetUnsaved();
            }
        } finally {
            folder.close();
        }
    }
}
