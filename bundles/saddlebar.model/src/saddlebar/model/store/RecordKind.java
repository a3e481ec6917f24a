package saddlebar.model.store;

import java.util.Arrays;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;

import saddlebar.model.commission.CommissionPackage;

/** The kinds of records this version writes. A key is never changed or given another meaning: records outlive programs. */
public enum RecordKind {
    BRING("bring", CommissionPackage.Literals.ARTWORK_BROUGHT),
    PIECES("pieces", CommissionPackage.Literals.PIECES_MADE),
    STENCIL("stencil", CommissionPackage.Literals.STENCIL_MADE),
    SHEET("sheet", CommissionPackage.Literals.SHEET_MADE),
    DOCUMENT("document", CommissionPackage.Literals.DOCUMENT_MADE),
    FUSE("fuse", CommissionPackage.Literals.SCREEN_LOAD),
    RECLAIM("reclaim", CommissionPackage.Literals.RECLAIM),
    MIX("mix", CommissionPackage.Literals.PAINT_MIX),
    PULL("pull", CommissionPackage.Literals.PRINT_RUN),
    FIRE("fire", CommissionPackage.Literals.FIRING),
    GLAZE("glaze", CommissionPackage.Literals.GLAZING),
    FIX("fix", CommissionPackage.Literals.FIXING),
    DEFECT("defect", CommissionPackage.Literals.DEFECT),
    REMAKE("remake", CommissionPackage.Literals.REMAKE),
    NOTE("note", CommissionPackage.Literals.NOTE),
    COST("cost", CommissionPackage.Literals.COST_LINE),
    STOCK("stock", CommissionPackage.Literals.STOCK_MOVE),
    APPROVE("approve", CommissionPackage.Literals.APPROVED);

    private final String key;
    private final EClass eClass;

    RecordKind(String key, EClass eClass) {
        this.key = key;
        this.eClass = eClass;
    }

    /** The word in the line. */
    public String key() {
        return key;
    }

    public EClass eClass() {
        return eClass;
    }

    public static Optional<RecordKind> ofKey(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key.equals(key)).findFirst();
    }

    static Optional<RecordKind> of(EClass eClass) {
        return Arrays.stream(values()).filter(kind -> kind.eClass == eClass).findFirst();
    }
}
