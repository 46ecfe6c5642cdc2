/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.lang.formatting.CanonicalLayout;
import hullwright.lang.formatting.FormattedText;
import hullwright.lang.formatting.FormattedText.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a text looks like after it was laid out. */
class CanonicalLayoutTest {

	private static final CanonicalLayout LAYOUT = HullTexts.service(CanonicalLayout.class);

	private static void assertLaidOut(String expected, String text) {
		FormattedText formatted = LAYOUT.format(text);
		assertEquals(List.of(), formatted.problems());
		assertEquals(expected, formatted.text());
		assertEquals(expected, LAYOUT.format(expected).text(), "a second time changes nothing");
	}

	@Test
	void anItemALineIndentedByTabs() {
		assertLaidOut("""
				import "standard:parts"

				series Skerry "Day boat" {
					switch main
					switch pumps "Bilge pumps"

					network instruments of kind instrument bus {
						backbone of light {
							terminator left : endFemale
							tee block : block4 at helm
							cable 3 m
						}
						drop block.1 via 2 m of light to display : instrumentDisplay
					}
				}
				""", """
				import   "standard:parts"

				series Skerry "Day boat"
				{

				  switch main switch pumps "Bilge pumps"



				  network instruments of kind instrument bus {
				  backbone of light { terminator left:endFemale
				      tee   block   : block4  at helm cable 3m
				  }
				  drop block . 1 via 2 m   of light to display:instrumentDisplay
				  }

				}""");
	}

	@Test
	void aBodyOnOneLineStaysThere() {
		assertLaidOut("""
				catalog Kit { family micro { standard; rated 4 A; contact 5 mohm } tee plain { backbone micro male, micro female } }
				""", """
				catalog  Kit{family micro{standard ;rated 4A;contact 5 mohm}tee plain{backbone micro male ,micro female}}
				""");
	}

	@Test
	void aBodyWithOneLineBreakHasOnePropertyALine() {
		assertLaidOut("""
				catalog Kit {
					family micro {
						standard;
						rated 4 A;
						contact 5 mohm
					}
				}
				""", """
				catalog Kit {
					family micro { standard; rated 4 A;
						contact 5 mohm }
				}
				""");
	}

	@Test
	void aBodyTooWideForALineIsOpened() {
		String wide = "Invented, and described at such length that no line of a hundred and twenty columns takes it";
		assertLaidOut("""
				catalog Kit {
					family micro {
						standard;
						rated 4 A;
						source "%s"
					}
				}
				""".formatted(wide), """
				catalog Kit {
					family micro { standard; rated 4 A; source "%s" }
				}
				""".formatted(wide));
	}

	@Test
	void exactlyAHundredAndTwentyColumnsFit() {
		String text = "catalog Kit {\n\tfamily micro { source \"%s\" }\n}\n";
		String fits = text.formatted("x".repeat(120 - 4 - "family micro { source \"\" }".length()));
		assertLaidOut(fits, fits);
		assertTrue(LAYOUT.format(text.formatted("x".repeat(121 - 4 - "family micro { source \"\" }".length()))).text().contains("micro {\n\t\tsource"));
	}

	@Test
	void bothBlocksOfAConditionAreOpenedTogether() {
		assertLaidOut("""
				series S {
					network n {
						when a {
							cap x.1 with blank
						} else {
							cap x.2 with blank
						}
						when a { cap x.1 with blank } else { cap x.2 with blank }
					}
				}
				""", """
				series S {
					network n {
						when a { cap x.1 with blank } else {
							cap x.2 with blank }
						when a { cap x.1 with blank }
						else { cap x.2 with blank }
					}
				}
				""");
	}

	@Test
	void anEmptyBlockClosesOnItsLine() {
		assertLaidOut("profile Yard from standard { }\n", "profile Yard from standard {\n\n}\n");
	}

	@Test
	void namesRangesAndRulesHaveNoSpacesInside() {
		assertLaidOut("""
				catalog Kit {
					tee block { ports 1..4 : micro female }
					device sounder { supply 9.5 V .. 16 V; load 57.4 mohm/m at 12 V }
				}
				profile Yard from standard { cabling/drop-too-long { error above 6 m } }
				""".replace("load 57.4 mohm/m at 12 V", "load 3 LEN"), """
				catalog Kit {
					tee block { ports 1 .. 4:micro female }
					device sounder { supply 9.5V..16 V ; load 3LEN }
				}
				profile Yard from standard { cabling/drop-too-long { error above 6m } }
				""");
	}

	@Test
	void aLineBreakWithinAnItemGoesWhereTheItemFitsOnALine() {
		assertLaidOut("""
				series S {
					network n {
						drop bow.1 via 2 m of light to display : chartDisplay at helm when flybridge
					}
				}
				""", """
				series S {
					network n {
						drop bow
							.1 via 2 m of light
							to display : chartDisplay

							at helm when flybridge
					}
				}
				""");
	}

	@Test
	void aLineBreakWithinAnItemStaysWhereTheItemDoesNotFit() {
		assertLaidOut("""
				series S {
					network n {
						drop bow.1 via 2 m of light, screwToQuick, 4 m of quickCable, wallPair through engineWall, 3 m of quickCable
								to display : chartDisplay at helm when flybridge {
							label "CD1"
						}
					}
				}
				""".replace("when flybridge {", "{"), """
				series S {
					network n {
						drop bow.1 via 2 m of light, screwToQuick, 4 m of quickCable, wallPair through engineWall, 3 m of quickCable
						to display:chartDisplay at helm { label "CD1" }
					}
				}
				""");
	}

	@Test
	void commentsStayWhereTheyAre() {
		assertLaidOut("""
				// first of all

				catalog Kit { // trailing
					// on a line of its own

					/** The usual cable. */
					cable light { /* inline */ power 22 AWG } /* trailing, too */
					/* before the item */ cable heavy {
						power 15 AWG // thick
						// nothing follows
					}
					/*
					   inner lines
					stay
					*/
					tee plain { }
				} // the end
				// the very end
				""", """


				// first of all

				catalog Kit {    // trailing
				// on a line of its own


				  /** The usual cable. */
				  cable light { /* inline */ power 22 AWG }/* trailing, too */
				  /* before the item */   cable heavy { power 15 AWG // thick
				         // nothing follows

				  }
						/*
					   inner lines
					stay
					*/
				  tee plain { }
				} // the end
				// the very end""");
	}

	@Test
	void commentsWithinAnItemKeepTheirLineBreaks() {
		assertLaidOut("""
				series S {
					network n {
						drop bow.1 // from the bow
								via 2 m /* light */ of light
								// to the helm
								to display : chartDisplay
						drop /* port */ bow.2 to depth : sounder
					}
				}
				""", """
				series S {
					network n {
						drop bow.1 // from the bow
						via 2 m /* light */ of light
						// to the helm
						to display : chartDisplay
						drop /* port */ bow.2
							to depth : sounder
					}
				}
				""");
	}

	@Test
	void aSeparatorAfterACommentStaysAfterIt() {
		assertLaidOut("""
				catalog Kit {
					family micro {
						standard // by an open standard
								;
						rated 4 A
					}
				}
				""", """
				catalog Kit { family micro { standard // by an open standard
				; rated 4 A } }
				""");
	}

	@Test
	void lineEndsAndByteOrderMarkStay() {
		assertLaidOut("\uFEFFcatalog Kit {\r\n\ttee plain { }\r\n\r\n\ttee fancy { }\r\n}\r\n",
				"\uFEFF\r\n catalog Kit {\r\n\r\n tee plain { }\r\n\r\n\r\ntee fancy { }}");
		assertLaidOut("catalog Kit { }\n", "catalog Kit { }");
	}

	@Test
	void nothingStaysNothing() {
		assertLaidOut("", "");
		assertLaidOut("", "\n\n  \n");
		assertLaidOut("\uFEFF", "\uFEFF\n");
		assertLaidOut("// nothing yet\n", "  // nothing yet   ");
	}

	@Test
	void namesThatReferToNothingDoNotMatter() {
		assertLaidOut("series S { network n { drop nowhere.1 to x : nothing } }\n", "series S{network n{drop nowhere.1 to x:nothing}}");
	}

	@Test
	void aTextThatIsNotUnderstoodIsLeftAlone() {
		String text = "catalog Kit   {\n\ttee plain { }\n\ttee }\n}\n";
		FormattedText formatted = LAYOUT.format(text);
		assertEquals(text, formatted.text());
		Problem first = formatted.problems().get(0);
		assertEquals(List.of(3, 6), List.of(first.line(), first.column()));
		assertTrue(first.message().contains("'}'"), first.message());
	}

	@Test
	void aQuantityWithoutItsUnitIsLeftAlone() {
		FormattedText formatted = LAYOUT.format("catalog Kit   { family micro { rated 4 } }");
		assertEquals("catalog Kit   { family micro { rated 4 } }", formatted.text());
		assertEquals(List.of(1), formatted.problems().stream().map(Problem::line).toList());
	}
}
