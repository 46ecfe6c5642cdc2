/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Language services: completion, hover, symbols and findings, behind one language server whose face is lsp4j.
 */
package hullwright.lang.ide;
