/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * One boat as it will be built: immutable records, without EMF and without strings where a quantity is meant. The analyses
 * compute on these records and the rules read them.
 */
package hullwright.network;
