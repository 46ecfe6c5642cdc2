/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What the platform's generic editor is taught about .hull files: colours, completion, hover, fixes and outline.
 */
package hullwright.workbench.editor;
