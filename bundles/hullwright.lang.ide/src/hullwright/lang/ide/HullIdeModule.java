/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

/**
 * What the language services use in place of Xtext's defaults.
 */
public class HullIdeModule extends AbstractHullIdeModule {
}
