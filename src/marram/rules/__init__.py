"""The Rules of Golf as code: facts in, ruling out. Standard library only; knows no map, no screen."""
