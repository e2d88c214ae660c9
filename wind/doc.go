// Package wind reads a wind record or forecast and says what sea it raises.
package wind
