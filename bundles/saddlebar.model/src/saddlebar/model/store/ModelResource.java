package saddlebar.model.store;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.xmi.XMIException;
import org.eclipse.emf.ecore.xmi.XMLLoad;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Identified;
import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Refusal;

/**
 * One model file as XMI 2.0. Whatever is read is taken for hostile: no DOCTYPE, no entities, no packages fetched, only relative links. A
 * file of an older format is brought up to date in memory, a newer one is refused. Objects get their id when they join the file.
 */
public final class ModelResource extends XMIResourceImpl {
    /** Ends the name of every model file. */
    public static final String EXTENSION = "saddlebar";

    private static final String FORMAT_VERSION = "formatVersion";

    private Supplier<String> newId = () -> UUID.randomUUID().toString();
    private boolean broughtUpToDate;
    private String sha256OnDisk = "";
    private String sha256Tried = "";

    public ModelResource(URI uri) {
        super(uri);
        setIntrinsicIDToEObjectMap(new HashMap<>());
    }

    @Override
    protected void init() {
        super.init();
        setEncoding("UTF-8");
        Map<Object, Object> save = getDefaultSaveOptions();
        save.put(XMLResource.OPTION_LINE_WIDTH, 120); // lines that a person and a version control system can compare
        save.put(XMLResource.OPTION_URI_HANDLER, new RelativeLinks());
        Map<Object, Object> load = getDefaultLoadOptions();
        load.put(XMLResource.OPTION_URI_HANDLER, new RelativeLinks());
        load.put(XMLResource.OPTION_DEFER_IDREF_RESOLUTION, true);
    }

    /** Where new ids come from. */
    void idsFrom(Supplier<String> ids) {
        newId = ids;
    }

    /** Whether what was read had an older format, so that a save is due. */
    public boolean wasBroughtUpToDate() {
        return broughtUpToDate;
    }

    /** Hash of the file as it now lies on the disk; empty if it is not there. */
    void isOnDiskAs(String sha256) {
        sha256OnDisk = sha256;
        sha256Tried = sha256;
    }

    /** A save of these bytes is tried; it may come through even if it seems to fail. */
    void isTriedAs(String sha256) {
        sha256Tried = sha256;
    }

    /** Hash of the file as it was read or last saved; empty if it was never on the disk. */
    String sha256OnDisk() {
        return sha256OnDisk;
    }

    /** Whether what lies on the disk is what this program read, saved or tried to save there. */
    boolean knows(String sha256) {
        return sha256.equals(sha256OnDisk) || sha256.equals(sha256Tried);
    }

    @Override
    protected XMLLoad createXMLLoad() {
        return new GuardedLoad(createXMLHelper());
    }

    @Override
    protected XMLLoad createXMLLoad(Map<?, ?> options) {
        return createXMLLoad();
    }

    @Override
    public void doLoad(InputStream in, Map<?, ?> options) throws IOException {
        String where = where();
        byte[] bytes = in.readAllBytes();
        isOnDiskAs(Hashes.sha256(bytes));
        Formats formats = Formats.current();
        int version = formats.versionOf(where, bytes);
        broughtUpToDate = version != formats.version();
        byte[] current = broughtUpToDate ? formats.broughtUpToDate(where, bytes, version) : bytes;
        try {
            super.doLoad(new ByteArrayInputStream(current), options);
        } catch (IOException | RuntimeException e) {
            throw Refusals.ofXml(where, e);
        }
        if (!getErrors().isEmpty()) {
            Diagnostic first = getErrors().get(0);
            throw first instanceof XMIException xmi
                    ? Refusals.ofXmi(where, xmi)
                    : new Refusal(where + ":" + first.getLine(), first.getMessage(), Refusals.RESTORE);
        }
        if (getContents().size() != 1) {
            throw new Refusal(where, "holds " + getContents().size() + " objects at the top instead of one", Refusals.RESTORE);
        }
    }

    @Override
    public void doSave(OutputStream out, Map<?, ?> options) throws IOException {
        for (EObject root : getContents()) {
            EStructuralFeature version = root.eClass().getEStructuralFeature(FORMAT_VERSION);
            if (version == null) {
                throw new IllegalStateException(root.eClass().getName() + " cannot be the root of a model file");
            }
            String current = String.valueOf(Formats.current().version());
            if (!current.equals(root.eGet(version))) {
                root.eSet(version, current);
            }
        }
        super.doSave(out, options);
    }

    private String where() {
        URI uri = getURI();
        return uri.isFile() ? uri.toFileString() : uri.toString();
    }

    @Override
    protected boolean isAttachedDetachedHelperRequired() {
        return true;
    }

    @Override
    protected void attachedHelper(EObject object) {
        if (!isLoading() && object instanceof Identified identified && identified.getId() == null) {
            identified.setId(newId.get());
        }
        super.attachedHelper(object);
    }

    /** The package must be known before the first file is read; outside OSGi nobody else does it. */
    static void registerPackage() {
        CommissionPackage.eINSTANCE.eClass();
    }
}
