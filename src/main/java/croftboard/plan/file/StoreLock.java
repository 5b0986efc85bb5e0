package croftboard.plan.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.locks.ReentrantLock;

/**
 * One writer at a time in a folder of plans, over threads and processes. The system frees the lock of a process that
 * dies. Readers need none: they see files only whole.
 */
final class StoreLock {
    private static final ReentrantLock THREADS = new ReentrantLock();
    private final FileChannel channel;
    private final FileLock lock;

    private StoreLock(FileChannel channel, FileLock lock) {
        this.channel = channel;
        this.lock = lock;
    }

    /** Waits until it is ours. */
    static StoreLock on(Path folder) throws IOException {
        THREADS.lock();
        try {
            FileChannel channel = FileChannel.open(folder.resolve(".lock"), StandardOpenOption.CREATE,
                    StandardOpenOption.WRITE);
            try {
                return new StoreLock(channel, channel.lock());
            } catch (IOException | OverlappingFileLockException e) {
                channel.close();
                throw e;
            }
        } catch (IOException | RuntimeException e) {
            THREADS.unlock();
            throw e;
        }
    }

    void free() throws IOException {
        try {
            lock.release();
            channel.close();
        } finally {
            THREADS.unlock();
        }
    }
}
