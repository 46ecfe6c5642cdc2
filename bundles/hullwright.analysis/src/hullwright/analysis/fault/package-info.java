/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What happens when something fails: short circuits and the fuses that must end them, and what is lost with each fuse, joint,
 * cable, bridge or source.
 */
package hullwright.analysis.fault;
