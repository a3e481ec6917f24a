package saddlebar.model.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.Client;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Window;
import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Refusal;

/**
 * A commission on disk. Opened, it has read {@code commission.saddlebar} and nothing else: the studio and each window are loaded when they
 * are first asked for. The objects belong to one thread at a time.
 */
public final class CommissionFolder implements AutoCloseable {
    static final String FILE = "commission.saddlebar";
    static final String WINDOWS = "windows";
    static final String STUDIO = "studio";
    static final String ARTWORK = "artwork";
    static final String PHOTOS = "photos";

    private static final Pattern WINDOW_NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{0,31}");
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul"); // no file may be called so on some systems

    private final ModelFolder folder;
    private final StudioFolder studio;
    private final Surroundings surroundings;
    private final Disk disk;
    private final List<String> removed = new ArrayList<>();
    private final Links links;

    private CommissionFolder(ModelFolder folder, StudioFolder studio, Surroundings surroundings, Disk disk) {
        this.folder = folder;
        this.studio = studio;
        this.surroundings = surroundings;
        this.disk = disk;
        this.links = new Links(this);
    }

    /** Makes a new commission and opens it for writing. */
    public static CommissionFolder create(Path path, NewCommission settings) throws IOException {
        return create(path, settings, Surroundings.system());
    }

    public static CommissionFolder create(Path path, NewCommission settings, Surroundings surroundings) throws IOException {
        return create(path, settings, surroundings, new LocalDisk());
    }

    static CommissionFolder create(Path path, NewCommission settings, Surroundings surroundings, Disk disk) throws IOException {
        Path target = path.toAbsolutePath().normalize();
        Optional<Path> shared = settings.sharedStudio().map(studio -> studio.toAbsolutePath().normalize());
        if (shared.isPresent()) {
            prepareShared(target, shared.get(), settings, surroundings, disk);
        }
        FolderDraft.make(target, disk, draft -> write(draft, settings, shared, surroundings));
        CommissionFolder made = open(target, Access.WRITE, surroundings, disk);
        boolean done = false;
        try {
            made.joinStudio();
            done = true;
            return made;
        } finally {
            if (!done) {
                made.close();
            }
        }
    }

    private static void prepareShared(Path target, Path shared, NewCommission settings, Surroundings surroundings, Disk disk) throws IOException {
        if (shared.startsWith(target) || target.startsWith(shared)) {
            throw new Refusal(shared.toString(), "a shared studio and a commission cannot lie in each other", "lay them side by side");
        }
        if (!shared.getRoot().equals(target.getRoot())) {
            throw new Refusal(shared.toString(), "lies on another drive than the commission, so that no relative path leads there",
                    "lay both on one drive");
        }
        if (!Files.exists(shared.resolve(StudioFolder.FILE))) {
            StudioFolder.create(shared, shared.getFileName().toString(), settings.library(), surroundings, disk);
        }
    }

    private static void write(Path draft, NewCommission settings, Optional<Path> shared, Surroundings surroundings) throws IOException {
        if (shared.isEmpty()) {
            StudioFolder.write(draft.resolve(STUDIO), settings.title(), settings.library(), surroundings);
        }
        for (String name : List.of(WINDOWS, "records", ARTWORK, PHOTOS)) {
            Files.createDirectories(draft.resolve(name));
        }
        FolderSet set = new FolderSet(surroundings);
        Path studioFolder = shared.isPresent() ? shared.get().toRealPath() : draft.resolve(STUDIO);
        set.allow(new InnerPaths(studioFolder));
        Commission commission = CommissionFactory.eINSTANCE.createCommission();
        commission.setTitle(settings.title());
        commission.setNumber(settings.number().isEmpty() ? null : settings.number());
        commission.setUnits(settings.units());
        commission.getPapers().addAll(settings.papers());
        if (!settings.client().isEmpty()) {
            Client client = CommissionFactory.eINSTANCE.createClient();
            client.setName(settings.client());
            commission.setClient(client);
        }
        ModelResource resource = set.create(draft.resolve(FILE));
        resource.getContents().add(commission);
        commission.setStudio((Studio) set.load(studioFolder.resolve(StudioFolder.FILE)).getContents().get(0));
        resource.save(Map.of());
    }

    public static CommissionFolder open(Path path, Access access) throws IOException {
        return open(path, access, Surroundings.system());
    }

    /**
     * Opens a commission.
     *
     * @throws Refusal         if it is none, or cannot be read
     * @throws saddlebar.model.problem.LockedException if somebody else is writing it
     */
    public static CommissionFolder open(Path path, Access access, Surroundings surroundings) throws IOException {
        return open(path, access, surroundings, new LocalDisk());
    }

    static CommissionFolder open(Path path, Access access, Surroundings surroundings, Disk disk) throws IOException {
        if (!Files.isRegularFile(path.resolve(FILE)) && !Files.isRegularFile(path.resolve(SafeSave.LIST))) {
            throw new Refusal(path.toString(), "is no commission: it holds no " + FILE, "name the folder of a commission, or make one with new");
        }
        FolderSet set = new FolderSet(surroundings);
        ModelFolder own = new ModelFolder(path, set, access.writes(), surroundings, disk);
        StudioFolder studio = null;
        boolean done = false;
        try {
            if (access == Access.WRITE_WITH_STUDIO) { // the studio's lock comes first, so its place must be known before ours is taken
                own.finishSaves();
                studio = studioOf(own, access, surroundings, disk);
                studio.begin(true);
                set.getResources().clear(); // what was read without a lock may be old
                set.getURIResourceMap().clear();
                own.holdNow();
            } else if (access.writes()) {
                own.holdNow();
            } else {
                own.finishSaves();
            }
            if (studio == null) {
                studio = studioOf(own, access, surroundings, disk);
                studio.begin(false);
            }
            CommissionFolder opened = new CommissionFolder(own, studio, surroundings, disk);
            opened.commission();
            done = true;
            return opened;
        } finally {
            if (!done) {
                own.close();
                if (studio != null) {
                    studio.close();
                }
            }
        }
    }

    private static StudioFolder studioOf(ModelFolder own, Access access, Surroundings surroundings, Disk disk) throws IOException {
        Path file = own.root().resolve(FILE);
        Commission commission = commission(own);
        EObject link = (EObject) commission.eGet(CommissionPackage.Literals.COMMISSION__STUDIO, false);
        if (link == null) {
            throw new Refusal(file.toString(), "names no studio", Refusals.RESTORE);
        }
        URI uri = EcoreUtil.getURI(link).trimFragment();
        if (!uri.isFile() || !StudioFolder.FILE.equals(uri.lastSegment())) {
            throw new Refusal(file.toString(), "names " + uri.lastSegment() + " as its studio instead of a " + StudioFolder.FILE, Refusals.RESTORE);
        }
        Path place = Path.of(uri.toFileString()).toAbsolutePath().normalize();
        if (!Files.isRegularFile(place)) {
            throw new Refusal(place.toString(), "the studio of this commission is missing", "put the studio's folder back where it was,"
                    + " or correct the studio link in " + file);
        }
        if (place.startsWith(own.root())) {
            own.paths().requireInside(place);
        }
        return new StudioFolder(new ModelFolder(place.getParent(), own.set(), access.writes(), surroundings, disk));
    }

    private static Commission commission(ModelFolder own) {
        Path file = own.root().resolve(FILE);
        EObject root = own.set().load(file).getContents().get(0);
        if (root instanceof Commission commission) {
            return commission;
        }
        throw new Refusal(file.toString(), "holds a " + root.eClass().getName() + " instead of a commission", Refusals.RESTORE);
    }

    /** The commission's folder, links resolved. */
    public Path path() {
        return folder.root();
    }

    public Commission commission() {
        return commission(folder);
    }

    public Studio studio() {
        return studio.studio();
    }

    public StudioFolder studioFolder() {
        return studio;
    }

    /** Whether the studio lies inside this commission. */
    public boolean hasOwnStudio() {
        return studio.path().startsWith(path());
    }

    /** What happened in this commission; screen loads, mixes and firings stand in the studio's. */
    public RecordBook records() {
        return folder.records();
    }

    /** All loaded files, for editing domains and cross-referencers. */
    public ResourceSet resourceSet() {
        return folder.set();
    }

    public boolean isWritable() {
        return folder.isWritable();
    }

    /** Names of the windows in order; loads none. */
    public List<String> windowNames() {
        return windowFiles().stream().map(file -> file.getFileName().toString().replaceFirst("\\." + ModelResource.EXTENSION + "$", "")).toList();
    }

    private List<Path> windowFiles() {
        List<Path> files = new ArrayList<>();
        for (Window window : ((InternalEList<Window>) commission().getWindows()).basicList()) {
            files.add(Path.of(EcoreUtil.getURI(window).trimFragment().toFileString()));
        }
        return files;
    }

    /**
     * All windows, loaded.
     *
     * @throws Refusal if one is missing or cannot be read
     */
    public List<Window> windows() {
        InternalEList<Window> list = (InternalEList<Window>) commission().getWindows();
        List<Window> windows = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            windows.add(loaded(list, i));
        }
        return List.copyOf(windows);
    }

    /** One window, loaded. */
    public Optional<Window> window(String name) {
        int at = windowNames().indexOf(name);
        return at < 0 ? Optional.empty() : Optional.of(loaded((InternalEList<Window>) commission().getWindows(), at));
    }

    /** Loads by ourselves: a link that EMF follows keeps silent about what it could not read. */
    private Window loaded(InternalEList<Window> list, int at) {
        Window window = list.basicGet(at);
        if (window.eIsProxy()) {
            URI uri = ((InternalEObject) window).eProxyURI();
            Path file = Path.of(uri.trimFragment().toFileString());
            EObject root = folder.set().load(file).getContents().get(0);
            window = list.get(at);
            if (window.eIsProxy()) {
                throw new Refusal(file.toString(), "holds " + root.eClass().getName() + " " + EcoreUtil.getID(root) + " instead of the window "
                        + uri.fragment() + " that the commission names", Refusals.RESTORE);
            }
        }
        return window;
    }

    public boolean isLoaded(String windowName) {
        return folder.set().isLoaded(folder.root().resolve(WINDOWS).resolve(windowName + "." + ModelResource.EXTENSION));
    }

    /**
     * Adds an empty window with a file of its own; not yet saved.
     *
     * @param name short name and file name, such as W01: letters, digits, hyphen, underscore
     */
    public Window addWindow(String name, String title) throws IOException {
        requireWritable();
        if (!WINDOW_NAME.matcher(name).matches() || DEVICES.contains(name.toLowerCase(Locale.ROOT))) {
            throw new Refusal(name, "cannot be a window's name", "use up to 32 letters, digits, hyphens or underscores, such as W01");
        }
        if (windowNames().stream().anyMatch(name::equalsIgnoreCase)) {
            throw new Refusal(name, "is already a window of this commission", "choose another name");
        }
        String relative = WINDOWS + "/" + name + "." + ModelResource.EXTENSION;
        Path file = folder.paths().resolve(relative);
        if (Files.exists(file) && !removed.contains(relative)) {
            throw new Refusal(file.toString(), "exists, but the commission does not know it", "move it away, or choose another name");
        }
        Window window = CommissionFactory.eINSTANCE.createWindow();
        window.setName(name);
        window.setTitle(title);
        ModelResource resource = folder.set().create(file);
        if (removed.remove(relative)) {
            resource.isOnDiskAs(Hashes.sha256(file));
        }
        resource.getContents().add(window);
        commission().getWindows().add(window);
        return window;
    }

    /** Takes a window out; its file goes with the next save, and stays among the generations. */
    public void removeWindow(Window window) throws IOException {
        requireWritable();
        Resource resource = window.eResource();
        Path file = Path.of(resource.getURI().toFileString());
        commission().getWindows().remove(window);
        resource.getContents().remove(window);
        folder.set().getResources().remove(resource);
        folder.set().getURIResourceMap().values().remove(resource);
        if (Files.exists(file)) {
            removed.add(folder.paths().relative(file));
        }
    }

    private void requireWritable() {
        if (!folder.isWritable()) {
            throw new IllegalStateException(path() + " is open for reading only");
        }
    }

    /** Where loaded things are named from, and things by their ids. */
    public Links links() {
        return links;
    }

    /** @throws Refusal if the path leads out of the commission's folder */
    public Path resolve(String relative) throws IOException {
        return folder.paths().resolve(relative);
    }

    /** The path of an inner file as the model and records write it. */
    public String relative(Path inner) throws IOException {
        return folder.paths().relative(inner);
    }

    /** Copies an artwork file into the commission; the copy is never changed. A later one of the same name becomes the next revision. */
    public BroughtArtwork importArtwork(Path source) throws IOException {
        requireWritable();
        return new ArtworkFolder(folder.paths().resolve(ARTWORK), disk).bring(source);
    }

    /**
     * Copies a photo into the commission, under its content's hash. Whether it is a picture the caller has looked at.
     *
     * @param extension of its name there: {@code jpg}, {@code png}
     */
    public Attachment importPhoto(Path source, String extension) throws IOException {
        requireWritable();
        if (!extension.matches("[a-z0-9]{1,5}")) {
            throw new IllegalArgumentException("extension must be letters and digits: " + extension);
        }
        String sha256 = Hashes.sha256(source);
        Path target = folder.paths().resolve(PHOTOS + "/" + sha256 + "." + extension);
        if (!Files.isRegularFile(target) || !Hashes.sha256(target).equals(sha256)) {
            InnerCopy.copy(source, target, sha256, disk);
        }
        return new Attachment(folder.paths().relative(target), sha256);
    }

    /**
     * A file that a record holds on to.
     *
     * @return nothing if it is gone or is no longer what was recorded
     */
    public Optional<Path> attachment(Attachment attachment) throws IOException {
        Path file = folder.paths().resolve(attachment.file());
        return Files.isRegularFile(file) && Hashes.sha256(file).equals(attachment.sha256()) ? Optional.of(file) : Optional.empty();
    }

    public boolean isModified() {
        return !removed.isEmpty() || studio.isModified() || !changed().isEmpty();
    }

    private List<ModelResource> changed() {
        return folder.set().getResources().stream().map(ModelResource.class::cast).filter(Resource::isModified)
                .filter(resource -> Path.of(resource.getURI().toFileString()).startsWith(path()))
                .filter(resource -> !Path.of(resource.getURI().toFileString()).startsWith(studio.path())).toList();
    }

    /** Saves what has changed, all or nothing: first the studio, then the commission with its windows. */
    public void save() throws IOException {
        requireWritable();
        studio.save();
        folder.save(changed(), removed);
        removed.clear();
        UnsavedWork.remove(path(), disk);
    }

    /** All that is changed and not saved, as it is at this moment; to be written aside, on any thread. */
    public UnsavedWork.Snapshot unsavedNow() throws IOException {
        requireWritable();
        List<UnsavedWork.Change> changes = new ArrayList<>();
        Map<String, byte[]> bytes = new HashMap<>();
        for (ModelResource resource : studio.changed()) {
            changes.add(change(resource, studio.path(), true, bytes));
        }
        for (ModelResource resource : changed()) {
            changes.add(change(resource, path(), false, bytes));
        }
        for (String gone : removed) {
            changes.add(new UnsavedWork.Change(gone, false, Hashes.sha256(folder.paths().resolve(gone)), ""));
        }
        return new UnsavedWork.Snapshot(path(), disk, surroundings.now(), changes, bytes);
    }

    private static UnsavedWork.Change change(ModelResource resource, Path root, boolean ofStudio, Map<String, byte[]> bytes) throws IOException {
        byte[] written = ModelFolder.bytesOf(resource);
        String sha256 = Hashes.sha256(written);
        bytes.put(sha256, written);
        String file = InnerPaths.slashes(root.relativize(Path.of(resource.getURI().toFileString())));
        return new UnsavedWork.Change(file, ofStudio, resource.sha256OnDisk(), sha256);
    }

    /** What a session that died had not saved, if it still fits what is saved; asked after opening for writing, before any edit. */
    public Optional<UnsavedWork> unsavedWork() throws IOException {
        Optional<UnsavedWork> found = folder.isWritable() ? UnsavedWork.in(path(), disk) : Optional.empty();
        return found.isPresent() && found.get().fits(studio.path()) ? found : Optional.empty();
    }

    /**
     * Saves the work of a session that died; what was saved before stays among the generations. The folder must be closed and opened again
     * to see it.
     *
     * @throws IllegalStateException if something has been edited since the opening
     */
    public void takeUp(UnsavedWork work) throws IOException {
        requireWritable();
        if (isModified()) {
            throw new IllegalStateException("edited before unsaved work was taken up");
        }
        studio.putInPlace(work.filesOf(true));
        folder.putInPlace(work.filesOf(false));
        UnsavedWork.remove(path(), disk);
    }

    /** Forgets what lies aside: it was given up, or there is nothing unsaved any more. */
    public void forgetUnsaved() throws IOException {
        requireWritable();
        UnsavedWork.remove(path(), disk);
    }

    /** Enters this commission in its shared studio's list, or mends the entry after the folder was moved; saves the studio. */
    public void joinStudio() throws IOException {
        if (!hasOwnStudio()) {
            studio.join(commission(), path(), surroundings);
            studio.save();
        }
    }

    /** Kept earlier generations of a model file such as {@code windows/W01.saddlebar}, the latest last. */
    public List<Path> generations(String file) throws IOException {
        return List.copyOf(new SafeSave(folder.root(), disk).generations(file).values());
    }

    /** Gives up the locks; what was not saved is lost. */
    @Override
    public void close() throws IOException {
        try {
            folder.close();
        } finally {
            studio.close();
        }
    }
}
