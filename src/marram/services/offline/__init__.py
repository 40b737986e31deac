"""The whole book of an edition as one small document, to be walked without a network: every graph, and every word it ends in."""
