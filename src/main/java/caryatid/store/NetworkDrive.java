package caryatid.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Recognises folders on a network drive, where locks and the order of writes are unreliable. */
public final class NetworkDrive {
  // Names of file systems as Linux (mount(8)), macOS and Windows give them; from memory.
  private static final Set<String> TYPES =
      Set.of(
          "nfs",
          "nfs4",
          "cifs",
          "smb",
          "smb2",
          "smb3",
          "smbfs",
          "afpfs",
          "webdav",
          "davfs",
          "davfs2",
          "fuse.sshfs",
          "fuse.davfs2",
          "fuse.rclone",
          "macfuse",
          "9p",
          "afs",
          "ceph",
          "glusterfs",
          "fuse.glusterfs",
          "lustre",
          "ncpfs");

  private NetworkDrive() {}

  /** The kind of network drive a folder, or the nearest one above that is there, lies on. */
  public static Optional<String> of(Path folder) {
    Path there = folder.toAbsolutePath();
    while (!Files.exists(there) && there.getParent() != null) {
      there = there.getParent();
    }
    if (there.toString().startsWith("\\\\")) {
      return Optional.of("UNC");
    }
    try {
      return Optional.of(Files.getFileStore(there).type()).filter(NetworkDrive::isNetwork);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  static boolean isNetwork(String type) {
    return TYPES.contains(type.toLowerCase(Locale.ROOT));
  }
}
