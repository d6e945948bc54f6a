package starchfilm.proof;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.StandardOpenOption;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The system's disk, on which one chosen step fails: a file opened for writing, half of a write, a
 * sync, a rename, a deletion, a change of owner or rights.
 */
public final class FaultyDisk extends FileSystemProvider {
  private final FileSystem real = FileSystems.getDefault();
  private final FileSystemProvider disk = real.provider();
  private final FileSystem own = new Own();
  private final FailingStep plan;

  /** The disk on which what this plan says fails. */
  public FaultyDisk(FailingStep plan) {
    this.plan = plan;
  }

  /**
   * A path of the system's as one on this disk.
   *
   * @param path the path
   * @return the same file, by way of this disk
   */
  public Path at(Path path) {
    return (Path)
        Proxy.newProxyInstance(
            FaultyDisk.class.getClassLoader(), new Class<?>[] {Path.class}, new PathHandler(path));
  }

  private final class PathHandler implements java.lang.reflect.InvocationHandler {
    private final Path path;

    PathHandler(Path path) {
      this.path = path;
    }

    @Override
    public Object invoke(Object self, Method method, Object[] arguments) throws Throwable {
      if (method.getName().equals("getFileSystem")) {
        return own;
      }
      Object[] given = arguments == null ? new Object[0] : arguments.clone();
      Arrays.setAll(given, i -> given[i] instanceof Path named ? there(named) : given[i]);
      try {
        Object answer = method.invoke(path, given);
        return answer instanceof Path made ? at(made) : answer;
      } catch (InvocationTargetException e) {
        throw e.getCause();
      }
    }
  }

  private static Path there(Path path) {
    return Proxy.isProxyClass(path.getClass())
        ? ((PathHandler) Proxy.getInvocationHandler(path)).path
        : path;
  }

  @Override
  public FileChannel newFileChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    if (options.contains(StandardOpenOption.WRITE)) {
      plan.step("open");
    }
    return new FaultyChannel(disk.newFileChannel(there(path), options, attributes), plan);
  }

  @Override
  public SeekableByteChannel newByteChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    return options.contains(StandardOpenOption.WRITE)
        ? newFileChannel(path, options, attributes)
        : disk.newByteChannel(there(path), options, attributes);
  }

  @Override
  public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
    plan.step("make folder");
    disk.createDirectory(there(folder), attributes);
  }

  @Override
  public void delete(Path path) throws IOException {
    plan.step("delete");
    disk.delete(there(path));
  }

  @Override
  public void copy(Path from, Path to, CopyOption... options) throws IOException {
    plan.step("copy");
    disk.copy(there(from), there(to), options);
  }

  @Override
  public void move(Path from, Path to, CopyOption... options) throws IOException {
    plan.step("rename");
    disk.move(there(from), there(to), options);
  }

  @Override
  public void setAttribute(Path path, String name, Object value, LinkOption... options)
      throws IOException {
    plan.step("set attribute");
    disk.setAttribute(there(path), name, value, options);
  }

  @Override
  public DirectoryStream<Path> newDirectoryStream(
      Path folder, DirectoryStream.Filter<? super Path> filter) throws IOException {
    DirectoryStream<Path> files =
        disk.newDirectoryStream(there(folder), path -> filter.accept(at(path)));
    return new DirectoryStream<>() {
      @Override
      public java.util.Iterator<Path> iterator() {
        List<Path> all = new ArrayList<>();
        files.forEach(file -> all.add(at(file)));
        return all.iterator();
      }

      @Override
      public void close() throws IOException {
        files.close();
      }
    };
  }

  @Override
  public boolean isSameFile(Path one, Path other) throws IOException {
    return disk.isSameFile(there(one), there(other));
  }

  @Override
  public boolean isHidden(Path path) throws IOException {
    return disk.isHidden(there(path));
  }

  @Override
  public FileStore getFileStore(Path path) throws IOException {
    return disk.getFileStore(there(path));
  }

  @Override
  public void checkAccess(Path path, AccessMode... modes) throws IOException {
    disk.checkAccess(there(path), modes);
  }

  @Override
  public <V extends FileAttributeView> V getFileAttributeView(
      Path path, Class<V> type, LinkOption... options) {
    return disk.getFileAttributeView(there(path), type, options);
  }

  @Override
  public <A extends BasicFileAttributes> A readAttributes(
      Path path, Class<A> type, LinkOption... options) throws IOException {
    return disk.readAttributes(there(path), type, options);
  }

  @Override
  public Map<String, Object> readAttributes(Path path, String names, LinkOption... options)
      throws IOException {
    return disk.readAttributes(there(path), names, options);
  }

  @Override
  public Path readSymbolicLink(Path link) throws IOException {
    return at(Files.readSymbolicLink(there(link)));
  }

  @Override
  public String getScheme() {
    return "faulty";
  }

  @Override
  public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
    throw new UnsupportedOperationException();
  }

  @Override
  public FileSystem getFileSystem(URI uri) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Path getPath(URI uri) {
    throw new UnsupportedOperationException();
  }

  private final class Own extends FileSystem {
    @Override
    public FileSystemProvider provider() {
      return FaultyDisk.this;
    }

    @Override
    public Path getPath(String first, String... more) {
      return at(real.getPath(first, more));
    }

    @Override
    public PathMatcher getPathMatcher(String pattern) {
      PathMatcher matcher = real.getPathMatcher(pattern);
      return path -> matcher.matches(there(path));
    }

    @Override
    public Set<String> supportedFileAttributeViews() {
      return real.supportedFileAttributeViews();
    }

    @Override
    public String getSeparator() {
      return real.getSeparator();
    }

    @Override
    public boolean isOpen() {
      return true;
    }

    @Override
    public boolean isReadOnly() {
      return false;
    }

    @Override
    public Iterable<Path> getRootDirectories() {
      return List.of(getPath("/"));
    }

    @Override
    public Iterable<FileStore> getFileStores() {
      return real.getFileStores();
    }

    @Override
    public UserPrincipalLookupService getUserPrincipalLookupService() {
      return real.getUserPrincipalLookupService();
    }

    @Override
    public WatchService newWatchService() {
      throw new UnsupportedOperationException();
    }

    @Override
    public void close() {}
  }
}
