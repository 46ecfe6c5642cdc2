/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Rules about how parts mate: families, genders, ports, adapters. One class and one page each.
 */
package hullwright.rules.connectors;
