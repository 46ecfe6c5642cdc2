/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Figures as pictures: lines over the length of the backbone, bars against their limits, and who tells what to whom; each with the
 * table of its numbers.
 */
package hullwright.documents.chart;
