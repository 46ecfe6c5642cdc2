/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Tests rules by their pages and by marked texts, for the families that ship and for the rules of a house alike. An
 * expectation stands in the text that it is about, as a comment under the place:
 *
 * <pre>
 *   drop block.1 via 6.01 m of light to display : instrumentDisplay
 *   //                                  ^^^^^^^ error cabling/drop-too-long: the drop to display is 6.01 m long; the limit is 6 m
 * </pre>
 */
package hullwright.testkit;
