package saddlebar.model.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.JoinedCommission;
import saddlebar.model.commission.Studio;
import saddlebar.model.problem.Refusal;

/**
 * A studio on disk: {@code studio.saddlebar} and the records of what happens to its things. It is either inside a commission or a folder
 * of its own that several commissions share.
 */
public final class StudioFolder implements AutoCloseable {
    static final String FILE = "studio.saddlebar";
    private static final String LOGS = "logs";

    private final ModelFolder folder;

    StudioFolder(ModelFolder folder) {
        this.folder = folder;
    }

    /** Makes a new studio; the folder is absent or empty. It is closed again. */
    public static void create(Path path, String name, Optional<StudioLibrary> library, Surroundings surroundings) throws IOException {
        create(path, name, library, surroundings, new LocalDisk());
    }

    static void create(Path path, String name, Optional<StudioLibrary> library, Surroundings surroundings, Disk disk) throws IOException {
        FolderDraft.make(path, disk, draft -> write(draft, name, library, surroundings));
    }

    /** Writes a first studio file into a folder that nobody else knows yet. */
    static void write(Path path, String name, Optional<StudioLibrary> library, Surroundings surroundings) throws IOException {
        Files.createDirectories(path.resolve("records"));
        FolderSet set = new FolderSet(surroundings);
        ModelResource resource = set.create(path.resolve(FILE));
        Studio studio = CommissionFactory.eINSTANCE.createStudio();
        studio.setName(name);
        resource.getContents().add(studio);
        library.ifPresent(tables -> tables.fill(studio));
        resource.save(Map.of());
    }

    public static StudioFolder open(Path path, Access access) throws IOException {
        return open(path, access, Surroundings.system());
    }

    public static StudioFolder open(Path path, Access access, Surroundings surroundings) throws IOException {
        return open(path, access, surroundings, new LocalDisk());
    }

    static StudioFolder open(Path path, Access access, Surroundings surroundings, Disk disk) throws IOException {
        requireStudio(path);
        StudioFolder studio = new StudioFolder(new ModelFolder(path, new FolderSet(surroundings), access.writes(), surroundings, disk));
        studio.begin(access.writes());
        return studio;
    }

    static void requireStudio(Path path) {
        if (!Files.isRegularFile(path.resolve(FILE))) {
            throw new Refusal(path.toString(), "is no studio: it holds no " + FILE, "name the folder of a studio, or of a commission");
        }
    }

    /** Takes the lock for as long as this is open, or only ends what a killed program left. */
    void begin(boolean lock) throws IOException {
        if (lock) {
            folder.holdNow();
        } else {
            folder.finishSaves();
        }
    }

    public Path path() {
        return folder.root();
    }

    /** Loaded when first asked for. */
    public Studio studio() {
        EObject root = resource().getContents().get(0);
        if (root instanceof Studio studio) {
            return studio;
        }
        throw new Refusal(path().resolve(FILE).toString(), "holds a " + root.eClass().getName() + " instead of a studio", Refusals.RESTORE);
    }

    ModelResource resource() {
        return folder.set().load(folder.root().resolve(FILE));
    }

    public RecordBook records() {
        return folder.records();
    }

    /**
     * Copies what a kiln's logger wrote into the studio; the copy is never changed. A later one of the same name becomes the next revision.
     *
     * @return with the copy's path relative to the studio's folder
     */
    public BroughtArtwork keepLog(Path source) throws IOException {
        return folder.keep(LOGS, source);
    }

    /** @throws Refusal if the path leads out of the studio's folder */
    public Path resolve(String relative) throws IOException {
        return folder.paths().resolve(relative);
    }

    /** The commissions that joined, by their entries; a folder that is no longer there is among them. */
    public Map<JoinedCommission, Path> commissions() {
        Map<JoinedCommission, Path> found = new LinkedHashMap<>();
        for (JoinedCommission joined : studio().getCommissions()) {
            found.put(joined, path().resolve(joined.getFolder()).normalize());
        }
        return found;
    }

    /** Enters a commission that shares this studio, or mends its entry. Not yet saved. */
    void join(Commission commission, Path commissionFolder, Surroundings surroundings) {
        String relative = InnerPaths.slashes(path().relativize(commissionFolder));
        JoinedCommission entry = studio().getCommissions().stream().filter(joined -> commission.getId().equals(joined.getCommissionId())).findFirst()
                .orElse(null);
        if (entry != null && relative.equals(entry.getFolder())) {
            return;
        }
        if (entry == null) {
            entry = CommissionFactory.eINSTANCE.createJoinedCommission();
            entry.setCommissionId(commission.getId());
            entry.setJoined(surroundings.now());
            studio().getCommissions().add(entry);
        }
        entry.setName(commission.getTitle());
        entry.setFolder(relative);
    }

    /** Takes a commission's entry out. Not yet saved. */
    public void leave(JoinedCommission entry) {
        EcoreUtil.delete(entry);
    }

    public boolean isModified() {
        return folder.set().isLoaded(folder.root().resolve(FILE)) && resource().isModified();
    }

    /** The changed file, if it has changed. */
    List<ModelResource> changed() {
        return isModified() ? List.of(resource()) : List.of();
    }

    void putInPlace(SortedMap<String, Optional<byte[]>> files) throws IOException {
        folder.putInPlace(files);
    }

    /** Saves if anything has changed; takes the lock for that moment if it is not held. */
    public void save() throws IOException {
        if (isModified()) {
            folder.save(List.of(resource()), List.of());
        }
    }

    /** Kept earlier generations of a model file such as {@code studio.saddlebar}, the latest last. */
    public List<Path> generations(String file) throws IOException {
        return List.copyOf(new SafeSave(folder.root(), new LocalDisk()).generations(file).values());
    }

    /** Gives up the lock; what was not saved is lost. */
    @Override
    public void close() throws IOException {
        folder.close();
    }
}
