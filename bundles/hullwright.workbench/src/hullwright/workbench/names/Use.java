/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.names;

import org.eclipse.core.resources.IFile;

/**
 * A line that names what was looked for.
 *
 * @param file   the file
 * @param number the line's number, from 1
 * @param text   the line without what indents it
 */
record Use(IFile file, int number, String text) {
}
