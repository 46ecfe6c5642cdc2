/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import org.eclipse.core.filebuffers.IAnnotationModelFactory;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.IPath;
import org.eclipse.jface.text.source.AnnotationModel;
import org.eclipse.jface.text.source.IAnnotationModel;

/**
 * Gives open .hull files of the workspace annotations of ours.
 */
public final class FindingAnnotationModelFactory implements IAnnotationModelFactory {

	@Override
	public IAnnotationModel createAnnotationModel(IPath location) {
		IFile file = ResourcesPlugin.getWorkspace().getRoot().getFileForLocation(location);
		if (file == null && location.segmentCount() > 1) {
			file = ResourcesPlugin.getWorkspace().getRoot().getFile(location);
		}
		return file == null ? new AnnotationModel() : new FindingAnnotationModel(file);
	}
}
