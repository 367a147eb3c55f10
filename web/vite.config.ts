import { createHash } from 'node:crypto';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig, type Plugin } from 'vite';
import { viteSingleFile } from 'vite-plugin-singlefile';

/** Lets the page run its own inlined script and nothing else: the policy in index.html names the script's hash. */
function allowOnlyOwnScript(): Plugin {
  return {
    name: 'allow-only-own-script',
    enforce: 'post',
    generateBundle: {
      order: 'post',
      handler(_, bundle) {
        const page = bundle['index.html'];
        if (page?.type !== 'asset') this.error('The page was not built.');
        const html = String(page.source);
        const scripts = [...html.matchAll(/<script type="module"[^>]*>([\s\S]*?)<\/script>/g)].map((m) => m[1]);
        if (scripts.length !== 1) this.error(`Expected one inlined script, found ${scripts.length}.`);
        const hash = createHash('sha256').update(scripts[0]).digest('base64');
        page.source = html.replace('script-src-hash', () => `'sha256-${hash}'`);
      },
    },
  };
}

export default defineConfig({
  plugins: [svelte(), viteSingleFile({ removeViteModuleLoader: true }), allowOnlyOwnScript()],
  build: { target: 'es2022', chunkSizeWarningLimit: 2000, reportCompressedSize: false },
  logLevel: 'warn',
});
