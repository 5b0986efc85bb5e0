package croftboard.book.file;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.SortedMap;

/**
 * SHA-256 over the paths and contents of all files, in the order of their paths; lengths stand
 * before both, so no two books look alike.
 */
final class Fingerprint {
    private Fingerprint() { }

    static String of(SortedMap<String, byte[]> files) {
        MessageDigest digest = sha256();
        files.forEach((path, content) -> {
            add(digest, path.getBytes(StandardCharsets.UTF_8));
            add(digest, content);
        });
        return HexFormat.of().formatHex(digest.digest());
    }

    private static void add(MessageDigest digest, byte[] bytes) {
        digest.update(ByteBuffer.allocate(4).putInt(bytes.length).array());
        digest.update(bytes);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
