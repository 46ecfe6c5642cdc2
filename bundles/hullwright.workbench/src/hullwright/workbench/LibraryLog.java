/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench;

import java.io.FileNotFoundException;
import java.nio.file.NoSuchFileException;
import org.apache.log4j.AppenderSkeleton;
import org.apache.log4j.Level;
import org.apache.log4j.Logger;
import org.apache.log4j.spi.LoggingEvent;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;

/**
 * Brings what Xtext and the language server log into the platform's log, where a person looks. Without it the details of a
 * failure are lost.
 */
final class LibraryLog extends AppenderSkeleton {

	private final ILog log = Platform.getLog(LibraryLog.class);

	/** From now on warnings and errors of the libraries are in the platform's log. */
	static void open() {
		LibraryLog library = new LibraryLog();
		library.setThreshold(Level.WARN);
		Logger.getRootLogger().addAppender(library);
	}

	@Override
	protected void append(LoggingEvent event) {
		Throwable cause = event.getThrowableInformation() == null ? null : event.getThrowableInformation().getThrowable();
		if (isFileGone(cause)) {
			// deleted while it was read, as when a project goes; that it is gone is told to the server next
			return;
		}
		if (event.getLevel().isGreaterOrEqual(Level.ERROR)) {
			log.error(event.getRenderedMessage(), cause);
		} else {
			log.warn(event.getRenderedMessage(), cause);
		}
	}

	private static boolean isFileGone(Throwable failure) {
		for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
			if (cause instanceof FileNotFoundException || cause instanceof NoSuchFileException) {
				return true;
			}
		}
		return false;
	}

	@Override
	public void close() {
		// The platform's log stays open.
	}

	@Override
	public boolean requiresLayout() {
		return false;
	}
}
