/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What is offered while a text is written: parts that mate with what stands before, ports that are free, units, whole statements.
 */
package hullwright.lang.ide.completion;
