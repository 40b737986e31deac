"""Cards as they are entered, kept, laid beside the rulings and judged by the Rules."""
