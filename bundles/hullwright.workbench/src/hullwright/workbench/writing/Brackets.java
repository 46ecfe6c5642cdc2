/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.writing;

import hullwright.workbench.editor.HullPartitions;
import org.eclipse.jface.text.source.DefaultCharacterPairMatcher;

/**
 * Shows the other one of a pair of braces; braces in comments and quotes are none.
 */
public final class Brackets extends DefaultCharacterPairMatcher {

	/** Made by the generic editor. */
	public Brackets() {
		super(new char[] { '{', '}' }, HullPartitions.PARTITIONING);
	}
}
