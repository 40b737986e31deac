"""What one records, the others see: a stream of events over the growing log, filtered by role, that a phone takes up again where it slept."""
