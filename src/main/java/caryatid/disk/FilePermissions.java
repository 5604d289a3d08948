package caryatid.disk;

import static java.nio.file.attribute.PosixFilePermission.GROUP_EXECUTE;
import static java.nio.file.attribute.PosixFilePermission.GROUP_READ;
import static java.nio.file.attribute.PosixFilePermission.GROUP_WRITE;
import static java.nio.file.attribute.PosixFilePermission.OTHERS_EXECUTE;
import static java.nio.file.attribute.PosixFilePermission.OTHERS_READ;
import static java.nio.file.attribute.PosixFilePermission.OWNER_EXECUTE;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.attribute.AclEntry;
import java.nio.file.attribute.AclEntryFlag;
import java.nio.file.attribute.AclEntryPermission;
import java.nio.file.attribute.AclEntryType;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Permissions of the files the program writes: for the owner; for the group as far as their folder
 * grants them to the group; never for others. With access control lists (Windows), for the owner
 * alone; this is not tested there.
 */
public final class FilePermissions {
  private static final Set<PosixFilePermission> FOLDER =
      PosixFilePermissions.fromString("rwx------");
  private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-------");
  private static final Set<PosixFilePermission> GROUP =
      EnumSet.of(GROUP_READ, GROUP_WRITE, GROUP_EXECUTE);

  /** The bit by which what is made in a folder belongs to the folder's group. */
  private static final int FOR_THE_GROUP = 02000;

  private FilePermissions() {}

  /**
   * Makes a folder, and those above it that are missing, for their owner alone; in a folder that
   * hands its group on, for that group as well.
   */
  public static void createPrivateFolder(Path folder) throws IOException {
    create(folder.toAbsolutePath(), false);
  }

  /** Makes a folder in a store, with the rights of the group there. */
  public static void createStoreFolder(Path folder) throws IOException {
    create(folder.toAbsolutePath(), true);
  }

  /** Makes a folder of which the group may do as the owner may, with all that is made in it. */
  public static void createSharedFolder(Path folder) throws IOException {
    createPrivateFolder(folder);
    if (isPosix(folder)) {
      Files.setAttribute(folder, "unix:mode", FOR_THE_GROUP | 0770);
    }
  }

  private static void create(Path folder, boolean inStore) throws IOException {
    if (Files.isDirectory(folder)) {
      return;
    }
    Path parent = folder.getParent();
    if (parent != null) {
      create(parent, inStore);
    }
    try {
      Files.createDirectory(folder, only(folder, FOLDER));
    } catch (FileAlreadyExistsException e) {
      if (Files.isDirectory(folder)) {
        return;
      }
      throw new NotDirectoryException(folder.toString());
    }
    listOwner(folder);
    if (parent != null && (inStore || isForTheGroup(parent))) {
      setWithGroup(folder, FOLDER, groupOf(parent));
    }
  }

  /** With what a file or folder is made, so that at no time anybody else can read it. */
  public static FileAttribute<?>[] file(Path file) {
    return only(file, FILE);
  }

  private static FileAttribute<?>[] only(Path path, Set<PosixFilePermission> rights) {
    return isPosix(path)
        ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(rights)}
        : new FileAttribute<?>[0];
  }

  /** Gives a file that was made in a store, or that replaces another, the group's rights there. */
  public static void copyGroupRightsOfFolder(Path file, Path folder) throws IOException {
    if (isPosix(file)) {
      setWithGroup(file, FILE, groupOf(folder));
    }
  }

  /**
   * Gives a file that was made for its owner the group's rights of the one that it takes the place
   * of; where there is none, those of a folder that hands its group on.
   */
  public static void copyGroupRightsOfFormer(Path file, Path former) throws IOException {
    listOwner(file);
    if (!isPosix(file)) {
      return;
    }
    Path folder = former.toAbsolutePath().getParent();
    if (Files.exists(former)) {
      setWithGroup(file, FILE, groupOf(former));
    } else if (isForTheGroup(folder)) {
      setWithGroup(file, FILE, groupOf(folder));
    }
  }

  /** Gives a folder and all that is in it the rights of the folder that it is moved to. */
  static void copyGroupRightsToTree(Path tree, Path folder) throws IOException {
    if (!isPosix(tree)) {
      return;
    }
    Set<PosixFilePermission> group = groupOf(folder);
    DurableFiles.walk(tree, file -> set(file, FILE, group), inside -> set(inside, FOLDER, group));
  }

  /** Whether others than owner and group can get at what is in a folder. */
  public static boolean isOpen(Path folder) {
    try {
      Path real = folder.toRealPath();
      if (!isPosix(real)) {
        return false;
      }
      for (Path above = real.getParent(); above != null; above = above.getParent()) {
        if (!Files.getPosixFilePermissions(above).contains(OTHERS_EXECUTE)) {
          return false;
        }
      }
      Set<PosixFilePermission> rights = Files.getPosixFilePermissions(real);
      return rights.contains(OTHERS_EXECUTE) || rights.contains(OTHERS_READ);
    } catch (IOException | UnsupportedOperationException notThereOrNotTold) {
      return false;
    }
  }

  private static void setWithGroup(
      Path path, Set<PosixFilePermission> owner, Set<PosixFilePermission> group)
      throws IOException {
    if (!group.isEmpty()) {
      set(path, owner, group);
    }
  }

  private static void set(Path path, Set<PosixFilePermission> owner, Set<PosixFilePermission> group)
      throws IOException {
    Set<PosixFilePermission> rights = EnumSet.copyOf(owner);
    rights.addAll(group);
    if (!owner.contains(OWNER_EXECUTE)) {
      rights.remove(GROUP_EXECUTE);
    }
    if (!Files.getPosixFilePermissions(path, LinkOption.NOFOLLOW_LINKS).equals(rights)) {
      setKeepingGroup(path, rights);
    }
  }

  /** Setting rights alone would take the bit away by which a folder hands its group on. */
  private static void setKeepingGroup(Path path, Set<PosixFilePermission> rights)
      throws IOException {
    boolean handsOn = Files.isDirectory(path) && isForTheGroup(path);
    Files.setPosixFilePermissions(path, rights);
    if (handsOn) {
      int mode = (Integer) Files.getAttribute(path, "unix:mode");
      Files.setAttribute(path, "unix:mode", mode & 07777 | FOR_THE_GROUP);
    }
  }

  private static Set<PosixFilePermission> groupOf(Path path) throws IOException {
    if (!isPosix(path)) {
      return Set.of();
    }
    Set<PosixFilePermission> rights = EnumSet.noneOf(PosixFilePermission.class);
    rights.addAll(Files.getPosixFilePermissions(path));
    rights.retainAll(GROUP);
    return rights;
  }

  private static boolean isForTheGroup(Path folder) throws IOException {
    return folder.getFileSystem().supportedFileAttributeViews().contains("unix")
        && ((Integer) Files.getAttribute(folder, "unix:mode") & FOR_THE_GROUP) != 0;
  }

  private static boolean isPosix(Path path) {
    return path.getFileSystem().supportedFileAttributeViews().contains("posix");
  }

  private static void listOwner(Path path) throws IOException {
    AclFileAttributeView view = Files.getFileAttributeView(path, AclFileAttributeView.class);
    if (view != null && !isPosix(path)) {
      view.setAcl(
          List.of(
              AclEntry.newBuilder()
                  .setType(AclEntryType.ALLOW)
                  .setPrincipal(view.getOwner())
                  .setPermissions(EnumSet.allOf(AclEntryPermission.class))
                  .setFlags(AclEntryFlag.FILE_INHERIT, AclEntryFlag.DIRECTORY_INHERIT)
                  .build()));
    }
  }
}
