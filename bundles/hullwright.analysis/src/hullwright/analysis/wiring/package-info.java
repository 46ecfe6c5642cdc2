/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * How everything on the networks of a boat is joined: points, and what lies between them. Power, faults and signals are
 * computed on this one picture.
 */
package hullwright.analysis.wiring;
