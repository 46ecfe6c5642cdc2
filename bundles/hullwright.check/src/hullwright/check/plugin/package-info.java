/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Rules of a house: jars in the folder {@code rules} of a project or of a user's configuration. Each is off until somebody trusts its
 * checksum, since its rules run with the rights of whoever checks.
 */
package hullwright.check.plugin;
