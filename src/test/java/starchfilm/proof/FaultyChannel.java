package starchfilm.proof;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;

/** A file of a {@link FaultyDisk}, of which half a write is carried out where that fails. */
final class FaultyChannel extends FileChannel {
  private final FileChannel file;
  private final FailingStep plan;

  FaultyChannel(FileChannel file, FailingStep plan) {
    this.file = file;
    this.plan = plan;
  }

  @Override
  public int write(ByteBuffer from) throws IOException {
    if (plan.fails("write")) {
      file.write(from.slice().limit(from.remaining() / 2));
      throw plan.failure();
    }
    return file.write(from);
  }

  @Override
  public void force(boolean metaData) throws IOException {
    plan.step("sync");
    file.force(metaData);
  }

  @Override
  public FileLock tryLock(long position, long size, boolean shared) throws IOException {
    return file.tryLock(position, size, shared);
  }

  @Override
  public int read(ByteBuffer to) throws IOException {
    return file.read(to);
  }

  @Override
  public long position() throws IOException {
    return file.position();
  }

  @Override
  public FileChannel position(long position) throws IOException {
    file.position(position);
    return this;
  }

  @Override
  public long size() throws IOException {
    return file.size();
  }

  @Override
  protected void implCloseChannel() throws IOException {
    file.close();
  }

  @Override
  public long read(ByteBuffer[] to, int offset, int length) {
    throw new UnsupportedOperationException();
  }

  @Override
  public long write(ByteBuffer[] from, int offset, int length) {
    throw new UnsupportedOperationException();
  }

  @Override
  public FileChannel truncate(long size) {
    throw new UnsupportedOperationException();
  }

  @Override
  public long transferTo(long position, long count, WritableByteChannel target) {
    throw new UnsupportedOperationException();
  }

  @Override
  public long transferFrom(ReadableByteChannel from, long position, long count) {
    throw new UnsupportedOperationException();
  }

  @Override
  public int read(ByteBuffer to, long position) {
    throw new UnsupportedOperationException();
  }

  @Override
  public int write(ByteBuffer from, long position) {
    throw new UnsupportedOperationException();
  }

  @Override
  public MappedByteBuffer map(MapMode mode, long position, long size) {
    throw new UnsupportedOperationException();
  }

  @Override
  public FileLock lock(long position, long size, boolean shared) {
    throw new UnsupportedOperationException();
  }
}
