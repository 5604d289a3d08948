package caryatid.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NetworkDriveTest {
  @ParameterizedTest
  @ValueSource(strings = {"nfs4", "cifs", "SMB3", "fuse.sshfs"})
  void networkFileSystemsAreKnown(String type) {
    assertThat(NetworkDrive.isNetwork(type)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"ext4", "btrfs", "xfs", "tmpfs", "overlay", "NTFS", "apfs"})
  void localOnesAreNot(String type) {
    assertThat(NetworkDrive.isNetwork(type)).isFalse();
  }

  @Test
  void aFolderThatIsNotThereYetIsJudgedByTheOneAbove(@TempDir Path folder) {
    assertThat(NetworkDrive.of(folder.resolve("a/b"))).isEqualTo(NetworkDrive.of(folder));
  }
}
