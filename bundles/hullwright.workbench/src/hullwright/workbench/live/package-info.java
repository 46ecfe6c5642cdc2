/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The language server inside the workbench's own process: what is open goes to it, its findings come back as annotations and
 * markers, its fixes as edits.
 */
package hullwright.workbench.live;
