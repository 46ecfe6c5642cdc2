/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

/**
 * What the language uses in place of Xtext's defaults.
 */
public class HullRuntimeModule extends AbstractHullRuntimeModule {
}
