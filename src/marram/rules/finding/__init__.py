"""From what was told to the incidents it may be: learned from sentences of our own, ranked alike here and in the browser.

A sentence is taken apart into words (:mod:`.sentence`, :mod:`.misspelt`) and these into what is weighed (:mod:`.features`);
the weights stand in one file (:mod:`.model`, written by ``training/``); :mod:`.ranking` puts the incidents in order,
:mod:`.acts` finds several acts in one sentence. No ruling depends on any of it.
"""

from marram.rules.finding.find import MOST, Context, Found, find

__all__ = ["MOST", "Context", "Found", "find"]
