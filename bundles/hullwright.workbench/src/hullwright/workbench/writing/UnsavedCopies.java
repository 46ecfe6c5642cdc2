/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.writing;

import hullwright.lang.ide.EditorLanguage;
import java.io.IOException;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.osgi.framework.FrameworkUtil;

/**
 * Copies of texts that are not saved, kept beside the workspace while they are written, so that a process that is killed takes
 * none with it. A copy goes when its text is saved or closed.
 */
public final class UnsavedCopies {

	private static final ILog LOG = ILog.of(UnsavedCopies.class);
	private static final long PAUSE_MILLIS = 2_000;

	private final Path folder;
	private final Map<String, String> written = new TreeMap<>();

	private UnsavedCopies(Path folder) {
		this.folder = folder;
	}

	/** The copies of this workspace. */
	public static UnsavedCopies ofWorkspace() {
		return new UnsavedCopies(Platform.getStateLocation(FrameworkUtil.getBundle(UnsavedCopies.class)).append("unsaved").toPath());
	}

	/** What an earlier session left behind: texts by the path of their file in the workspace. */
	public Map<String, String> leftBehind() {
		Map<String, String> texts = new TreeMap<>();
		if (!Files.isDirectory(folder)) {
			return texts;
		}
		try (Stream<Path> files = Files.list(folder)) {
			for (Path file : files.filter(each -> each.toString().endsWith("." + EditorLanguage.FILE_EXTENSION)).toList()) {
				texts.put(URLDecoder.decode(file.getFileName().toString(), StandardCharsets.UTF_8), Files.readString(file));
			}
		} catch (IOException e) {
			LOG.warn("The copies of texts that were not saved cannot be read.", e);
		}
		return texts;
	}

	/** Forgets what an earlier session left behind. */
	public void forget() {
		leftBehind().keySet().forEach(this::remove);
	}

	/** Keeps copies from now on, in the background. */
	public void keep() {
		Job job = Job.create("Keeping copies of what is not saved", (IProgressMonitor monitor) -> copy());
		job.setSystem(true);
		job.setPriority(Job.DECORATE);
		job.addJobChangeListener(new JobChangeAdapter() {
			@Override
			public void done(IJobChangeEvent event) {
				if (Platform.isRunning()) {
					job.schedule(PAUSE_MILLIS);
				}
			}
		});
		job.schedule(PAUSE_MILLIS);
	}

	private void copy() {
		Map<String, String> dirty = new TreeMap<>();
		for (IFileBuffer buffer : FileBuffers.getTextFileBufferManager().getFileBuffers()) {
			if (buffer instanceof ITextFileBuffer text && buffer.isDirty() && isHull(buffer)) {
				dirty.put(buffer.getLocation().toString(), text.getDocument().get());
			}
		}
		dirty.forEach((path, text) -> {
			if (!text.equals(written.get(path))) {
				write(path, text);
			}
		});
		written.keySet().stream().filter(path -> !dirty.containsKey(path)).toList().forEach(path -> {
			written.remove(path);
			remove(path);
		});
	}

	private static boolean isHull(IFileBuffer buffer) {
		return buffer.getLocation() != null && EditorLanguage.FILE_EXTENSION.equals(buffer.getLocation().getFileExtension());
	}

	/** Whole or not at all, so that a copy is never half of a text. */
	private void write(String path, String text) {
		try {
			Files.createDirectories(folder);
			Path fresh = Files.writeString(folder.resolve("fresh.new"), text);
			Files.move(fresh, file(path), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
			written.put(path, text);
		} catch (IOException e) {
			LOG.warn("The text of " + path + " cannot be copied to " + folder + "; what is not saved is in danger.", e);
		}
	}

	private void remove(String path) {
		try {
			Files.deleteIfExists(file(path));
		} catch (IOException e) {
			LOG.warn("The copy of " + path + " cannot be deleted.", e);
		}
	}

	private Path file(String path) {
		return folder.resolve(URLEncoder.encode(path, StandardCharsets.UTF_8));
	}

	/** The file of the workspace that a copy is of, if it is still there. */
	public static Optional<IFile> original(String path) {
		IPath inWorkspace = IPath.fromOSString(path);
		return inWorkspace.segmentCount() < 2 ? Optional.empty()
				: Optional.of(ResourcesPlugin.getWorkspace().getRoot().getFile(inWorkspace)).filter(IFile::exists);
	}
}
