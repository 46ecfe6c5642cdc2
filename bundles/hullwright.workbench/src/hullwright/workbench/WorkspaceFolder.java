/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench;

import java.io.IOException;
import java.net.URL;
import java.nio.file.Path;
import org.eclipse.core.runtime.Platform;
import org.eclipse.osgi.service.datalocation.Location;

/**
 * The folder that holds the projects: the one given by -data, else "Hullwright" in the person's home folder.
 */
final class WorkspaceFolder {

	private WorkspaceFolder() {
	}

	/**
	 * Chooses and locks the folder.
	 *
	 * @return null when the folder is ours, else a sentence that says why not
	 */
	static String open() {
		Location location = Platform.getInstanceLocation();
		if (location == null) {
			return "Hullwright needs a folder for its projects. Leave out '-data @none', or give a folder with -data.";
		}
		try {
			if (location.isSet()) {
				return location.lock() ? null : inUse(location.getURL());
			}
			URL folder = Path.of(System.getProperty("user.home"), "Hullwright").toUri().toURL();
			return location.set(folder, true) ? null : inUse(folder);
		} catch (IOException | IllegalStateException e) {
			return "The folder for your projects cannot be used: " + e.getMessage() + "\n\nGive another one with -data.";
		}
	}

	private static String inUse(URL folder) {
		return "The folder " + folder.getPath() + " is in use by another Hullwright window."
				+ "\n\nUse that window, or start this one with another folder: -data FOLDER.";
	}
}
